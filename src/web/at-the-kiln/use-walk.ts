import { useCallback, useEffect, useMemo, useRef, useState } from "react";
import { readLoadPlan } from "../../loading/read-load-plan.ts";
import { readLoadRequest } from "../../loading/read-load-request.ts";
import { type SheetLoad, sheetLoad } from "../../sheets/sheet-load.ts";
import type { LoadRecord } from "../../studio/records/load-record.ts";
import { StudioRefusal, useCommand, useConnection, useSettings } from "../studio/hooks.ts";
import { remember, remembered } from "./memory.ts";
import {
  AT_THE_LID,
  type AtTheKiln,
  changedLevels,
  doneSteps,
  type Progress,
  progressOf,
  settle,
  stepToShow,
  ticksAfter,
} from "./ticks.ts";
import { levelPrints, loadingWalk, type PieceStep, type WalkStep } from "./walk.ts";

export type PlannedLoad = LoadRecord & { readonly plan: NonNullable<LoadRecord["plan"]> };

export interface Walk {
  readonly load: SheetLoad;
  readonly steps: readonly WalkStep[];
  readonly done: ReadonlySet<string>;
  readonly progress: Progress;
  /** Which step shows; as many as there are steps: the lid. */
  readonly at: number;
  /** Levels that are planned differently than when she last looked, from 1. */
  readonly changed: readonly number[] | null;
  readonly isClosed: boolean;
  readonly problem: unknown;
  readonly goTo: (at: number) => void;
  readonly setDone: (steps: readonly WalkStep[], isDone: boolean) => void;
  readonly lookedAtChange: () => void;
  readonly setClosed: (isClosed: boolean) => void;
}

// So long with the studio answering and nothing waiting, and its word is the only one.
const STUDIO_KNOWS_MS = 5000;

/** The walk through one load at the kiln: what is done is kept on this device at once, and sent on when it can be. */
export function useWalk(record: PlannedLoad): Walk {
  const command = useCommand();
  const connection = useConnection();
  const { lengthUnits } = useSettings();
  const [memory, setMemory] = useState<AtTheKiln>(() => remembered(record.id, record.plan, localStorage));
  const [problem, setProblem] = useState<unknown>(null);
  const latest = useRef(memory);

  const update = useCallback(
    (change: (was: AtTheKiln) => AtTheKiln) => {
      latest.current = change(latest.current);
      remember(record.id, latest.current, localStorage);
      setMemory(latest.current);
    },
    [record.id],
  );
  // From the first look on, a plan that changes is noticed.
  useEffect(() => update((was) => was), [update]);

  const { request, plan } = record;
  const load = useMemo(() => {
    const whole = readLoadRequest(request);
    return sheetLoad(whole, readLoadPlan(plan, whole));
  }, [request, plan]);
  const steps = useMemo(() => loadingWalk(load, lengthUnits), [load, lengthUnits]);
  const done = useMemo(() => doneSteps(steps, record.ticks, memory), [steps, record.ticks, memory]);
  const at = stepToShow(steps, done, memory.here);

  // A tick she took back herself before it was sent is no problem to tell her of.
  const tellRefusal = (error: unknown) => {
    if (!(error instanceof StudioRefusal)) throw error;
    setProblem(error);
  };
  const tickPieces = (pieces: readonly PieceStep[], isIn: boolean, now: string) => {
    const ticks = pieces.map(({ level, placement, piece }) => ({
      level,
      placement,
      at: now,
      in: isIn,
      ware: piece.piece.ware.name,
    }));
    const sent = Object.fromEntries(pieces.map(({ key }) => [key, now]));
    command("tick-load", { id: record.id, ticks }, (cache) =>
      cache.patch("loads", record.id, (kept) => ({ ...kept, ticks: ticksAfter(kept.ticks, ticks) })),
    ).then(
      () => update((was) => settle(was, sent)),
      (error: unknown) => {
        update((was) => settle(was, sent));
        tellRefusal(error);
      },
    );
  };
  const setDone = (which: readonly WalkStep[], isDone: boolean) => {
    setProblem(null);
    const now = new Date().toISOString();
    const pieces = which.filter((step) => step.kind === "piece");
    update((was) => {
      const marked = { ...was.done };
      const waiting = { ...was.waiting };
      for (const step of which) {
        if (step.kind === "piece") waiting[step.key] = { at: now, in: isDone, ware: step.piece.piece.ware.name };
        else if (isDone) marked[step.key] = now;
        else delete marked[step.key];
      }
      return { ...was, done: marked, waiting };
    });
    if (pieces.length > 0) tickPieces(pieces, isDone, now);
  };

  useEffect(() => {
    if (connection !== "here" || Object.keys(memory.waiting).length === 0) return;
    const timer = setTimeout(() => update((was) => ({ ...was, waiting: {} })), STUDIO_KNOWS_MS);
    return () => clearTimeout(timer);
  }, [connection, memory.waiting, update]);

  useMarkLoaded(record, memory.closedAt !== null, connection === "here", setProblem);

  return {
    load,
    steps,
    done,
    progress: progressOf(steps, done),
    at,
    changed: changedLevels(plan, memory),
    isClosed: memory.closedAt !== null || !isOpenState(record.state),
    problem,
    goTo: (to) => update((was) => ({ ...was, here: steps[to]?.key ?? AT_THE_LID })),
    setDone,
    lookedAtChange: () => update((was) => ({ ...was, prints: levelPrints(plan) })),
    setClosed: (isClosed) => {
      update((was) => ({ ...was, closedAt: isClosed ? new Date().toISOString() : null }));
      if (!isClosed && record.state === "loaded") {
        command("change-load", { id: record.id, version: record.version, state: "loading" }).catch(tellRefusal);
      }
    },
  };
}

const isOpenState = (state: LoadRecord["state"]): boolean => state === "planned" || state === "loading";

/**
 * Tells the studio that the load is in, once it answers and every tick has gone before: until then this device alone
 * knows that the lid is closed.
 */
function useMarkLoaded(
  { id, version, state }: LoadRecord,
  isClosed: boolean,
  isHere: boolean,
  refuse: (error: unknown) => void,
): void {
  const command = useCommand();
  const sent = useRef<number | null>(null);
  useEffect(() => {
    if (!isClosed || !isHere || !isOpenState(state) || sent.current === version) return;
    sent.current = version;
    command("change-load", { id, version, state: "loaded" }).catch((error: unknown) => {
      if (!(error instanceof StudioRefusal)) throw error;
      // Changed meanwhile: the newer version comes, and is tried in its turn.
      if (error.code !== "changed-since") refuse(error);
    });
  }, [command, id, version, state, isClosed, isHere, refuse]);
}
