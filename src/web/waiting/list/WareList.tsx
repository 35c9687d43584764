import { useWindowVirtualizer } from "@tanstack/react-virtual";
import { type Dispatch, type SetStateAction, useEffect, useLayoutEffect, useMemo, useRef, useState } from "react";
import type { LengthUnits } from "../../../measures/length.ts";
import { useAction } from "../../actions/registry.ts";
import { Checkbox } from "../../parts/index.ts";
import { batches as batchesWords } from "../words/ware-words.ts";
import { useRowHeight } from "./row-height.ts";
import { chooseOnly, chooseThrough, NOTHING_CHOSEN, type Selection, toggleOne } from "./selection.ts";
import styles from "./WareList.module.css";
import { type RowHands, rowId, WareRow } from "./WareRow.tsx";
import type { WaitingBatch } from "./waiting-batch.ts";

export interface WareListProps {
  readonly batches: readonly WaitingBatch[];
  readonly selection: Selection;
  readonly setSelection: Dispatch<SetStateAction<Selection>>;
  readonly units: LengthUnits;
  readonly today: string;
  readonly onOpen: (id: string) => void;
  /** What is changed in place. */
  readonly onEdit: Pick<RowHands, "setCount" | "setCone" | "setDue">;
}

const GROUP = "Waiting";

/** The list of what waits. Only the rows in sight are in the page, however many there are. */
export function WareList(props: WareListProps) {
  const { batches, selection, setSelection, units, today, onOpen } = props;
  const grid = useRef<HTMLTableSectionElement>(null);
  const [offset, setOffset] = useState(0);
  const height = useRowHeight();
  const virtual = useWindowVirtualizer({
    count: batches.length,
    estimateSize: () => height,
    overscan: 6,
    scrollMargin: offset,
    getItemKey: (i) => batches[i]?.record.id ?? i,
  });
  useLayoutEffect(() => {
    const list = grid.current;
    const page = list?.closest("main") ?? document.body;
    // Cards and filters above the list come and go, and change the height of the page when they do.
    const measure = () => setOffset(list ? Math.round(list.getBoundingClientRect().top + scrollY) : 0);
    measure();
    const watching = new ResizeObserver(measure);
    watching.observe(page);
    return () => watching.disconnect();
  }, []);
  // biome-ignore lint/correctness/useExhaustiveDependencies: measured anew when rows become higher or lower.
  useEffect(() => virtual.measure(), [height]);

  const [activeId, setActive] = useState<string | null>(null);
  const activeAt = Math.max(0, activeId === null ? 0 : batches.findIndex(({ record }) => record.id === activeId));
  const active = batches[activeAt]?.record.id ?? null;

  const latest = useRef({ props, batches });
  latest.current = { props, batches };
  const hands = useMemo<RowHands>(
    () => ({
      press: (id, withShift) => {
        const shown = latest.current.batches.map(({ record }) => record.id);
        setActive(id);
        setSelection((before) => (withShift ? chooseThrough(before, id, shown) : toggleOne(before, id)));
      },
      open: (id) => {
        setActive(id);
        latest.current.props.onOpen(id);
      },
      activate: setActive,
      setCount: (id, count) => latest.current.props.onEdit.setCount(id, count),
      setCone: (id, cone) => latest.current.props.onEdit.setCone(id, cone),
      setDue: (id, dueOn) => latest.current.props.onEdit.setDue(id, dueOn),
    }),
    [setSelection],
  );

  const isOnRow = (): boolean =>
    document.activeElement instanceof HTMLTableRowElement && grid.current?.contains(document.activeElement) === true;
  const go = (by: number, choosing = false) => {
    const next = batches[Math.min(batches.length - 1, Math.max(0, activeAt + by))]?.record.id;
    if (next === undefined) return;
    if (choosing && active !== null) {
      setSelection(({ ids }) => ({ ids: new Set([...ids, active, next]), anchor: next }));
    }
    setActive(next);
    virtual.scrollToIndex(batches.findIndex(({ record }) => record.id === next));
    requestAnimationFrame(() => document.getElementById(rowId(next))?.focus({ preventScroll: true }));
  };
  const onRow = (id: string, name: string, keys: string, run: () => void) => ({
    id: `waiting.${id}`,
    name,
    keys,
    group: GROUP,
    run,
    isEnabled: isOnRow,
  });
  useAction(onRow("next", "Next batch", "down", () => go(1)));
  useAction(onRow("previous", "Batch before", "up", () => go(-1)));
  useAction(onRow("choose-next", "Choose the next one too", "shift+down", () => go(1, true)));
  useAction(onRow("choose-previous", "Choose the one before too", "shift+up", () => go(-1, true)));
  useAction(onRow("choose", "Choose this batch", "space", () => active && hands.press(active, false)));
  useAction(onRow("edit", "Change this batch", "e", () => active && onOpen(active)));
  useAction(onRow("open", "Open this batch", "enter", () => active && onOpen(active)));
  const chooseAll = () => setSelection(chooseOnly(batches.map(({ record }) => record.id)));
  useAction({
    id: "waiting.choose-all",
    name: "Choose all that show",
    keys: "mod+a",
    group: GROUP,
    run: chooseAll,
    // In the search it chooses what is typed, as in any field.
    isEnabled: () => !document.activeElement?.matches("input:not([type=checkbox]), textarea, select"),
  });

  const chosen = batches.filter(({ record }) => selection.ids.has(record.id)).length;
  return (
    <div>
      <div className={styles.head}>
        <Checkbox
          isSelected={chosen > 0 && chosen === batches.length}
          isMixed={chosen > 0 && chosen < batches.length}
          onChange={(on) => (on ? chooseAll() : setSelection(NOTHING_CHOSEN))}
        >
          {chosen === 0 ? `Choose all ${batchesWords(batches.length)}` : `${chosen} of ${batches.length} chosen`}
        </Checkbox>
      </div>
      <table
        // biome-ignore lint/a11y/noNoninteractiveElementToInteractiveRole: a table one moves in row by row is a grid (ARIA).
        role="grid"
        aria-label="What waits"
        aria-multiselectable="true"
        aria-rowcount={batches.length}
        className={styles.table}
      >
        <tbody ref={grid} className={styles.grid} style={{ height: virtual.getTotalSize() }}>
          {virtual.getVirtualItems().map(({ index, start, key }) => {
            const batch = batches[index];
            if (!batch) return null;
            const { record } = batch;
            return (
              <WareRow
                key={key}
                record={record}
                glaze={batch.glaze}
                clayBody={batch.clayBody}
                inLoads={batch.inLoads}
                units={units}
                today={today}
                isChosen={selection.ids.has(record.id)}
                isActive={record.id === active}
                place={index + 1}
                top={start - offset}
                height={height}
                hands={hands}
              />
            );
          })}
        </tbody>
      </table>
    </div>
  );
}
