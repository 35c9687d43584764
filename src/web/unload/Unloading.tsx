import { useEffect, useRef, useState } from "react";
import type { Grade } from "../../studio/records/faults.ts";
import type { FiringRecord } from "../../studio/records/firing-record.ts";
import type { WareRecord } from "../../studio/records/ware-record.ts";
import { useAction } from "../actions/registry.ts";
import { useAwake } from "../at-the-kiln/use-awake.ts";
import { useSwipe } from "../at-the-kiln/use-swipe.ts";
import { Problem } from "../parts/index.ts";
import { KeptHere } from "../parts/KeptHere.tsx";
import { neighbourPiece, nextUnjudged, unjudged } from "./judging/judged.ts";
import { PieceSheet } from "./judging/PieceSheet.tsx";
import { OpeningPart } from "./opening/OpeningPart.tsx";
import { ShelfStop } from "./ShelfStop.tsx";
import { StopStrip } from "./StopStrip.tsx";
import { stopNextTo, stopsOf } from "./stops.ts";
import { SummaryStop } from "./summary/SummaryStop.tsx";
import { UnloadFoot } from "./UnloadFoot.tsx";
import { UnloadHead } from "./UnloadHead.tsx";
import styles from "./Unloading.module.css";
import { type PlannedLoad, useUnloading } from "./use-unloading.ts";

interface UnloadingProps {
  readonly firing: FiringRecord;
  readonly record: PlannedLoad;
  readonly ware: readonly WareRecord[];
  readonly back: { readonly href: string; readonly label: string };
}

/** A kiln being unpacked: its shelves from the top, each piece judged as it is taken out. */
export function Unloading({ firing, record, ware, back }: UnloadingProps) {
  const unloading = useUnloading(firing, record, ware);
  const { order, pieces, judged, here, goTo, judge } = unloading;
  const [chosenKey, setChosen] = useState<string | null>(null);
  const middle = useRef<HTMLDivElement>(null);
  useAwake();

  const stops = stopsOf(order);
  const onShelf = pieces.filter(({ level }) => level === here);
  const open = unjudged(onShelf, judged);
  const chosen = onShelf.find(({ key }) => key === chosenKey) ?? null;

  // The shelf with the piece on it stays in sight over the sheet.
  // biome-ignore lint/correctness/useExhaustiveDependencies: whenever another piece is chosen, or another shelf shows.
  useEffect(() => {
    middle.current?.scrollTo({ top: 0 });
  }, [chosen?.key, here]);

  const visit = (by: 1 | -1) => {
    const to = stopNextTo(stops, here, by);
    if (to === null) return;
    setChosen(null);
    goTo(to);
  };
  const lookAt = (key: string) => {
    const piece = pieces.find((each) => each.key === key);
    if (piece) goTo(piece.level);
    setChosen(key);
  };
  const step = (by: 1 | -1) => {
    const to = chosen ? neighbourPiece(pieces, chosen.key, by) : (open[0] ?? onShelf[0] ?? pieces[0] ?? null);
    if (!to) return;
    goTo(to.level);
    setChosen(to.key);
  };
  const grade = (as: Grade) => {
    const piece = chosen ?? open[0];
    if (!piece) return;
    const { faults = [], note = "", becomes } = judged.get(piece.key) ?? {};
    judge([piece], as, { faults: as === "good" ? [] : faults, note, becomes });
    // What came out well needs no more words: on to the next.
    setChosen(as === "good" ? (nextUnjudged(pieces, judged, piece)?.key ?? null) : piece.key);
  };
  const restOfShelf = () => {
    judge(open, "good");
    setChosen(null);
  };
  const rest = unjudged(pieces, judged);

  const group = "Unloading";
  const onAShelf = typeof here === "number";
  useAction({ id: "unload.good", name: "Good", keys: "g", group, run: () => grade("good"), isEnabled: onAShelf });
  useAction({
    id: "unload.second",
    name: "A second",
    keys: "s",
    group,
    run: () => grade("second"),
    isEnabled: onAShelf,
  });
  useAction({ id: "unload.lost", name: "Lost", keys: "l", group, run: () => grade("lost"), isEnabled: onAShelf });
  useAction({ id: "unload.next", name: "Next piece", keys: "right", group, run: () => step(1) });
  useAction({ id: "unload.before", name: "Piece before", keys: "left", group, run: () => step(-1) });
  useAction({ id: "unload.down", name: "Next shelf", keys: "down", group, run: () => visit(1) });
  useAction({ id: "unload.up", name: "Shelf before", keys: "up", group, run: () => visit(-1) });
  useAction({
    id: "unload.shelf",
    name: "All the rest of this shelf good",
    keys: "a",
    group,
    run: restOfShelf,
    isEnabled: open.length > 0,
  });
  useAction({
    id: "unload.all",
    name: "All the rest good",
    group,
    run: () => judge(rest, "good"),
    isEnabled: rest.length > 0,
  });
  const swipe = useSwipe({ left: () => visit(1), right: () => visit(-1) });

  return (
    <div className={styles.screen} data-whole-window>
      <UnloadHead unloading={unloading} back={back} />
      <StopStrip
        unloading={unloading}
        stops={stops}
        onGo={(stop) => {
          setChosen(null);
          goTo(stop);
        }}
      />
      <div className={styles.work}>
        <div ref={middle} className={styles.middle} {...swipe}>
          <KeptHere what="What you say is kept here and goes when it answers." />
          <Problem error={unloading.problem} />
          {here === "opening" && <OpeningPart key={firing.endedAt} firing={firing} onKept={() => visit(1)} />}
          {here === "summary" && <SummaryStop unloading={unloading} onChoose={lookAt} />}
          {typeof here === "number" && (
            <ShelfStop unloading={unloading} level={here} chosen={chosen} onChoose={setChosen} />
          )}
        </div>
        {chosen && (
          <div className={styles.sheet}>
            <PieceSheet
              key={chosen.level}
              unloading={unloading}
              piece={chosen}
              onGrade={grade}
              onStep={step}
              onNext={() => setChosen(nextUnjudged(pieces, judged, chosen)?.key ?? null)}
              onClose={() => setChosen(null)}
            />
          </div>
        )}
      </div>
      <div className={chosen ? styles.footBesideSheet : undefined}>
        <UnloadFoot
          unloading={unloading}
          open={open.length}
          stops={stops}
          onVisit={visit}
          onRestOfShelf={restOfShelf}
        />
      </div>
    </div>
  );
}
