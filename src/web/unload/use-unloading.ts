import { useCallback, useMemo, useRef, useState } from "react";
import { type ConeName, isCone } from "../../firing/cones/cone.ts";
import { readLoadPlan } from "../../loading/read-load-plan.ts";
import { readLoadRequest } from "../../loading/read-load-request.ts";
import type { SheetLoad } from "../../sheets/sheet-load.ts";
import { type Judged, mergeOutcomes } from "../../studio/firings/merge-outcomes.ts";
import type { Place } from "../../studio/loads/places.ts";
import type { Becomes } from "../../studio/records/becomes.ts";
import type { FaultName, Grade } from "../../studio/records/faults.ts";
import type { Outcome, SeenCone } from "../../studio/records/firing-parts.ts";
import type { FiringRecord } from "../../studio/records/firing-record.ts";
import type { LoadRecord } from "../../studio/records/load-record.ts";
import type { WareRecord } from "../../studio/records/ware-record.ts";
import { drawnLoad } from "../load-editor/drawing/drawn-load.ts";
import { tell } from "../parts/index.ts";
import { useCommand, useGlazes, useUndo } from "../studio/hooks.ts";
import { TakenBack } from "../studio/sending.ts";
import { meantCone } from "./cones/cone-set.ts";
import { byPlace, type Progress, progressOf } from "./judging/judged.ts";
import { type FiredPiece, firedPieces, unpackingOrder } from "./judging/pieces.ts";
import { remember, remembered, type Stop, type UnloadMemory } from "./memory.ts";
import { type Summary, summaryOf } from "./summary/summary.ts";

export type PlannedLoad = LoadRecord & { readonly plan: NonNullable<LoadRecord["plan"]> };

/** What is said of a piece beside its grade. */
export interface Details {
  readonly faults?: readonly FaultName[];
  readonly note?: string;
  /** What it becomes, where she says so. */
  readonly becomes?: Becomes | undefined;
}

/** One kiln being unpacked. */
export interface Unloading {
  readonly firing: FiringRecord;
  readonly record: PlannedLoad;
  readonly sheet: SheetLoad;
  /** The levels' indices, the top one first. */
  readonly order: readonly number[];
  /** In the order in which they come out. */
  readonly pieces: readonly FiredPiece[];
  readonly judged: ReadonlyMap<string, Outcome>;
  readonly progress: Progress;
  readonly summary: Summary;
  readonly meant: ConeName | null;
  readonly here: Stop;
  readonly problem: unknown;
  readonly goTo: (stop: Stop) => void;
  readonly judge: (places: readonly Place[], grade: Grade | null, details?: Details) => void;
  readonly setMeant: (cone: ConeName) => void;
  readonly seeCones: (cones: readonly SeenCone[]) => void;
  /** Keeps what came out: the pieces move on, the load is unpacked. */
  readonly keep: () => void;
}

/**
 * A kiln being unpacked. What is said goes through the line of waiting changes, so that it holds without a network and
 * over a reload.
 */
export function useUnloading(firing: FiringRecord, record: PlannedLoad, ware: readonly WareRecord[]): Unloading {
  const command = useCommand();
  const glazes = useGlazes();
  const { undo } = useUndo(`firing:${firing.id}`);
  const [memory, setMemory] = useState<UnloadMemory>(() => remembered(firing.id, localStorage));
  const [problem, setProblem] = useState<unknown>(null);
  const latest = useRef(memory);
  const update = useCallback(
    (change: Partial<UnloadMemory>) => {
      latest.current = { ...latest.current, ...change };
      remember(firing.id, latest.current, localStorage);
      setMemory(latest.current);
    },
    [firing.id],
  );

  const { request, plan } = record;
  const sheet = useMemo(() => {
    const whole = readLoadRequest(request);
    return drawnLoad(whole, readLoadPlan(plan, whole));
  }, [request, plan]);
  const order = useMemo(() => unpackingOrder(sheet), [sheet]);
  const pieces = useMemo(
    () => firedPieces(sheet, record, ware, new Map((glazes ?? []).map(({ id, name }) => [id, name]))),
    [sheet, record, ware, glazes],
  );
  const judged = useMemo(() => byPlace(firing.outcomes), [firing.outcomes]);
  const kind = firing.programme?.kind;

  // What she took back herself before it was sent is no problem to tell her of.
  const refused = (error: unknown) => {
    if (!(error instanceof TakenBack)) setProblem(error);
  };
  const judge = (places: readonly Place[], grade: Grade | null, details: Details = {}) => {
    const { faults = [], note = "", becomes } = details;
    if (places.length === 0) return;
    setProblem(null);
    const at = new Date().toISOString();
    const more = becomes === undefined ? {} : { becomes };
    const said = places.map(({ level, placement }): Judged => ({ level, placement, grade, faults, note, at, ...more }));
    command("judge-pieces", { id: firing.id, outcomes: said }, (cache) =>
      cache.patch("firings", firing.id, (was) => ({ ...was, ...mergeOutcomes(was, said, at) })),
    ).catch(refused);
  };
  const seeCones = (cones: readonly SeenCone[]) => {
    setProblem(null);
    command("see-cones", { id: firing.id, cones }, (cache) =>
      cache.patch("firings", firing.id, (was) => ({ ...was, cones: [...cones] })),
    ).catch(refused);
  };
  // Not waited for: without a network it is kept on this device, and shown as done.
  const keep = () => {
    setProblem(null);
    command("judge-pieces", { id: firing.id, outcomes: [], becomes: [] }, (cache) =>
      cache.patch("loads", record.id, (was) => ({ ...was, state: "unpacked" })),
    ).then(() => tell(`Unpacked ${record.name}`, () => void undo().catch(setProblem)), refused);
  };

  const first = firing.state === "cooling" ? "opening" : (order[0] ?? "opening");
  const isThere = typeof memory.here !== "number" || order.includes(memory.here);
  const own = memory.meantCone !== null && isCone(memory.meantCone) ? memory.meantCone : null;
  return {
    ...{ firing, record, sheet, order, pieces, judged, problem, judge, seeCones, keep },
    progress: progressOf(pieces, judged),
    summary: useMemo(() => summaryOf(pieces, judged, kind), [pieces, judged, kind]),
    meant: own ?? meantCone(firing),
    here: isThere ? (memory.here ?? first) : first,
    goTo: (here) => update({ here }),
    setMeant: (cone) => update({ meantCone: cone }),
  };
}
