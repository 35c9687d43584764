import { placeKey } from "../../studio/loads/places.ts";
import type { Tick } from "../../studio/records/load-record.ts";
import { levelPrints, type PlanLevels, type WalkStep } from "./walk.ts";

/** A tick set or taken back on this device, until the studio has it too. */
export interface WaitingTick {
  readonly at: string;
  readonly in: boolean;
  /** Which kind of piece it was about: a plan changed meanwhile may have put another there. */
  readonly ware: string;
}

/** What this device remembers of one load at the kiln, whether or not there is a network. */
export interface AtTheKiln {
  /** The plan's levels as they were when she last looked at what had changed. */
  readonly prints: readonly string[];
  /** Steps that set down no piece, and when each was done. */
  readonly done: Readonly<Record<string, string>>;
  /** By place: ticks the studio may not have yet. */
  readonly waiting: Readonly<Record<string, WaitingTick>>;
  /** The step she is at. */
  readonly here: string | null;
  /** When she closed the lid; null until then. The studio is told as soon as it answers. */
  readonly closedAt: string | null;
}

/** Nothing done yet. */
export const nothingDone = (plan: PlanLevels): AtTheKiln => ({
  prints: levelPrints(plan),
  done: {},
  waiting: {},
  here: null,
  closedAt: null,
});

/** The studio's ticks after some were set or taken back: of two about one place the later counts. */
export function ticksAfter(ticks: readonly Tick[], changes: readonly (Tick & { readonly in: boolean })[]): Tick[] {
  const kept = new Map(ticks.map((tick) => [placeKey(tick), tick]));
  for (const { level, placement, at, in: isIn } of changes) {
    const key = placeKey({ level, placement });
    if ((kept.get(key)?.at ?? "") > at) continue;
    if (isIn) kept.set(key, { level, placement, at });
    else kept.delete(key);
  }
  return [...kept.values()];
}

/** Every step that is done: the studio's ticks, with this device's later ones over them. */
export function doneSteps(steps: readonly WalkStep[], ticks: readonly Tick[], memory: AtTheKiln): Set<string> {
  const ticked = new Map(ticks.map((tick) => [placeKey(tick), tick.at]));
  const done = new Set<string>();
  for (const step of steps) {
    if (step.kind === "do" ? memory.done[step.key] !== undefined : isIn(step.key, wareOf(step), ticked, memory)) {
      done.add(step.key);
    }
  }
  return done;
}

const wareOf = (step: WalkStep): string => (step.kind === "piece" ? step.piece.piece.ware.name : "");

function isIn(place: string, ware: string, ticked: ReadonlyMap<string, string>, { waiting }: AtTheKiln): boolean {
  const here = waiting[place];
  const there = ticked.get(place);
  if (!here || here.ware !== ware) return there !== undefined;
  return there === undefined || there < here.at ? here.in : true;
}

/** How far she has come. */
export interface Progress {
  readonly piecesIn: number;
  readonly pieces: number;
  /** Every piece is in. */
  readonly allIn: boolean;
  /** All that is to be done before the lid is done too. */
  readonly allDone: boolean;
}

export function progressOf(steps: readonly WalkStep[], done: ReadonlySet<string>): Progress {
  const pieces = steps.filter(({ kind }) => kind === "piece");
  const piecesIn = pieces.filter(({ key }) => done.has(key)).length;
  return {
    piecesIn,
    pieces: pieces.length,
    allIn: piecesIn === pieces.length,
    allDone: steps.every(({ key }) => done.has(key)),
  };
}

/** Where she is when she is past the last step: at the lid. */
export const AT_THE_LID = "the lid";

/** Where to begin or go on: where she was, else the first thing not done, else the end. */
export function stepToShow(steps: readonly WalkStep[], done: ReadonlySet<string>, here: string | null): number {
  if (here === AT_THE_LID) return steps.length;
  const remembered = steps.findIndex(({ key }) => key === here);
  if (remembered >= 0) return remembered;
  const open = steps.findIndex(({ key }) => !done.has(key));
  return open >= 0 ? open : steps.length;
}

/** The levels, from 1, that are planned differently from when she last looked; null where none is. */
export function changedLevels(plan: PlanLevels, memory: AtTheKiln): number[] | null {
  const now = levelPrints(plan);
  const count = Math.max(now.length, memory.prints.length);
  const changed = Array.from({ length: count }, (_, i) => i).filter((i) => now[i] !== memory.prints[i]);
  return changed.length === 0 ? null : changed.map((i) => i + 1);
}

/**
 * This device's ticks once the studio has answered for what was sent: those it holds, and those about another piece
 * than now stands at their place, go.
 *
 * @param settled places whose tick the studio has taken or refused, with the moment of that tick
 */
export function settle(memory: AtTheKiln, settled: Readonly<Record<string, string>>): AtTheKiln {
  const waiting = Object.entries(memory.waiting).filter(([place, { at }]) => settled[place] !== at);
  return { ...memory, waiting: Object.fromEntries(waiting) };
}
