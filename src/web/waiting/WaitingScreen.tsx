import { lazy, Suspense, useMemo, useRef, useState } from "react";
import { useLocation } from "wouter";
import { useAction } from "../actions/registry.ts";
import { AddIcon, Button, Empty, Menu, OpenFileIcon, Page, SaveIcon, Spinner } from "../parts/index.ts";
import { useSettings } from "../studio/hooks.ts";
import { newLoadAddress } from "./chosen-for-load.ts";
import { FilterBar } from "./list/FilterBar.tsx";
import { FiringCards } from "./list/FiringCards.tsx";
import { type FiringGroup, firingGroups } from "./list/firing-groups.ts";
import { chooseOnly, NOTHING_CHOSEN } from "./list/selection.ts";
import { useShown } from "./list/use-shown.ts";
import { useWaiting } from "./list/use-waiting.ts";
import { WareList } from "./list/WareList.tsx";
import { rowId } from "./list/WareRow.tsx";
import type { WaitingBatch } from "./list/waiting-batch.ts";
import { NO_FILTER, type WareFilter } from "./list/ware-filter.ts";
import { Chosen } from "./many/Chosen.tsx";
import { useWareCommands } from "./use-ware-commands.ts";
import styles from "./WaitingScreen.module.css";
import { dueWords } from "./words/due-words.ts";
import { useToday } from "./words/use-today.ts";
import { coneWords } from "./words/ware-words.ts";

const NewBatchSheet = lazy(() => import("./batch/NewBatchSheet.tsx"));
const BatchSheet = lazy(() => import("./batch/BatchSheet.tsx"));
const ImportSheet = lazy(() => import("./import-list/ImportSheet.tsx"));

/** What is open over the list: a sheet, or a batch by its id. */
type Open = "new" | "import" | { readonly batchId: string } | null;

/** What waits to be fired: the first screen of her day. */
export default function WaitingScreen() {
  const batches = useWaiting();
  return batches ? <Waiting batches={batches} /> : <Spinner />;
}

function Waiting({ batches }: { readonly batches: readonly WaitingBatch[] }) {
  const { lengthUnits } = useSettings();
  const today = useToday();
  const commands = useWareCommands();
  const [, go] = useLocation();
  const [open, setOpen] = useState<Open>(null);
  const search = useRef<HTMLInputElement>(null);
  const { filter, setFilter, order, setOrder, selection, setSelection, shown, values } = useShown(batches);
  const groups = useMemo(() => firingGroups(batches), [batches]);
  const close = () => setOpen(null);

  useAction({ id: "waiting.new", name: "New batch", keys: "n", group: "Waiting", run: () => setOpen("new") });
  useAction({
    id: "waiting.search",
    name: "Search what waits",
    keys: "/",
    group: "Waiting",
    run: () => search.current?.focus(),
    isEnabled: batches.length > 0,
  });
  useAction({ id: "waiting.import", name: "Take in a list (CSV)", group: "Waiting", run: () => setOpen("import") });
  useAction({ id: "waiting.export", name: "Save the list (CSV)", group: "Waiting", run: saveList });

  const chooseGroup = (group: FiringGroup) => {
    if (isJust(filter, group)) {
      setFilter(NO_FILTER);
      setSelection(NOTHING_CHOSEN);
      return;
    }
    setFilter(filterOf(group));
    setSelection(chooseOnly(group.freeIds.length > 0 ? group.freeIds : group.ids));
  };
  const change = useMemo(() => {
    const nameOf = (id: string): string => latest.get(id) ?? "";
    const latest = new Map(batches.map(({ record }) => [record.id, record.ware.name]));
    return {
      setCount: (id: string, count: number) => void commands.change([id], { ware: { count } }),
      setCone: (id: string, cone: string) =>
        void commands.change([id], { ware: { cone: cone === "" ? null : cone } }, `${nameOf(id)}: ${coneWords(cone)}`),
      setDue: (id: string, dueOn: string | null) =>
        void commands.change([id], { dueOn }, `${nameOf(id)}: ${dueOn ? "due " : ""}${dueWords(dueOn, today)}`),
    };
  }, [batches, commands, today]);
  const toList = () => {
    const first = shown[0]?.record.id;
    if (first !== undefined) document.getElementById(rowId(first))?.focus();
  };
  const opened =
    open !== null && typeof open === "object" ? batches.find(({ record }) => record.id === open.batchId) : undefined;
  const newBatch = (
    <Button look="main" icon={<AddIcon />} onPress={() => setOpen("new")}>
      New batch
    </Button>
  );
  const listMenu = (
    <Menu
      label="More: lists"
      items={[
        { id: "import", label: "Take in a list", icon: <OpenFileIcon />, onPress: () => setOpen("import") },
        { id: "export", label: "Save the list", icon: <SaveIcon />, onPress: saveList },
      ]}
    />
  );

  return (
    <Page
      title="What waits"
      undoScope="ware"
      actions={
        <>
          {listMenu}
          {batches.length > 0 && <span className={styles.add}>{newBatch}</span>}
        </>
      }
    >
      {batches.length === 0 ? (
        <Empty
          title="Nothing waits yet"
          words="Write down what stands on your ware boards: pick a form, type its size and how many there are. From that, Wareboard works out which pieces go into a load together."
          action={
            <>
              {newBatch}
              <Button icon={<OpenFileIcon />} onPress={() => setOpen("import")}>
                Take in a list
              </Button>
            </>
          }
        />
      ) : (
        <>
          <FiringCards groups={groups} isShown={(group) => isJust(filter, group)} onChoose={chooseGroup} />
          <FilterBar
            filter={filter}
            setFilter={setFilter}
            values={values}
            order={order}
            setOrder={setOrder}
            search={search}
            toList={toList}
          />
          {shown.length === 0 ? (
            <NothingShown hasFinished={filter === NO_FILTER} onShowAll={() => setFilter(NO_FILTER)} />
          ) : (
            <WareList
              batches={shown}
              selection={selection}
              setSelection={setSelection}
              units={lengthUnits}
              today={today}
              onOpen={(batchId) => setOpen({ batchId })}
              onEdit={change}
            />
          )}
          {selection.ids.size > 0 ? (
            <Chosen
              batches={batches}
              shown={shown}
              selection={selection}
              commands={commands}
              onPlan={(ids) => go(newLoadAddress(ids))}
              onClear={() => setSelection(NOTHING_CHOSEN)}
            />
          ) : (
            <div className={styles.thumb}>{newBatch}</div>
          )}
        </>
      )}
      <Suspense fallback={null}>
        {open === "new" && <NewBatchSheet onClose={close} />}
        {open === "import" && <ImportSheet onClose={close} />}
        {opened && <BatchSheet key={opened.record.id} record={opened.record} onClose={close} />}
      </Suspense>
    </Page>
  );
}

function NothingShown({ hasFinished, onShowAll }: { readonly hasFinished: boolean; readonly onShowAll: () => void }) {
  return hasFinished ? (
    <Empty
      title="All of it is finished"
      words="Nothing waits for a firing. Finished ware shows under the filter for stages."
    />
  ) : (
    <Empty
      title="No batch fits"
      words="Nothing that waits has all of these. Take a filter out, or search for less."
      action={<Button onPress={onShowAll}>Show all</Button>}
    />
  );
}

const filterOf = ({ kind, cone }: FiringGroup): WareFilter => ({
  words: "",
  chosen: { ...NO_FILTER.chosen, kind: [kind ?? "none"], cone: [cone ?? "none"] },
});

const isJust = (filter: WareFilter, group: FiringGroup): boolean =>
  JSON.stringify(filter) === JSON.stringify(filterOf(group));

/** The browser's own way to save a file. */
function saveList(): void {
  const link = document.createElement("a");
  link.href = "/api/ware.csv";
  link.download = "";
  link.click();
}
