import { checkPieceIn, checkPlan } from "../src/loading/checker/check-plan.ts";
import { clearances } from "../src/loading/checker/clearances.ts";
import { sceneOf } from "../src/loading/checker/scene.ts";
import { movePiece } from "../src/loading/editing/edit-pieces.ts";
import { findRoom } from "../src/loading/editing/find-room.ts";
import { holdPiece } from "../src/loading/editing/live-answer.ts";
import { planLoad } from "../src/loading/planner/plan-load.ts";
import { seededChance } from "../src/measures/seeded-chance.ts";
import { benchmarkRequest } from "./instances.ts";
import type { Row } from "./row.ts";

/** Times of a drag in one thread, milliseconds by the clock, each list in order. */
export interface Drags {
  readonly pieces: number;
  /** Taking a piece up. */
  readonly takeUp: readonly number[];
  /** One answer while it moves: every rule of the piece and the nearest distances. */
  readonly answer: readonly number[];
  /** The yardstick: the same answer asked of the whole plan anew. */
  readonly anew: readonly number[];
  /** A light snap: room within three millimetres. */
  readonly snap: readonly number[];
  /** The whole load's rules, after it is set down. */
  readonly check: readonly number[];
}

const MOVES = 40;

/** Drags pieces of one benchmark load about, every answer timed by itself. */
export function drags(seed: number, waiting: number): Drags | null {
  const request = benchmarkRequest(seed, waiting);
  const outcome = planLoad(request, { seed, workLimit: 400_000 });
  if (outcome.kind === "impossible") return null;
  const { plan } = outcome;
  const chance = seededChance(seed);
  const lists = { takeUp: [], answer: [], anew: [], snap: [], check: [] } as Record<string, number[]>;
  const timed = <Result>(list: string, run: () => Result): Result => {
    const from = performance.now();
    const result = run();
    (lists[list] as number[]).push(performance.now() - from);
    return result;
  };
  const places = plan.levels.flatMap(({ placements }, level) =>
    placements.map((_, placement) => ({ level, placement })),
  );
  for (const place of places) {
    const held = timed("takeUp", () => holdPiece(request, plan, place));
    const from = plan.levels[place.level]?.placements[place.placement];
    if (!held || !from) continue;
    for (let i = 0; i < MOVES; i++) {
      const spot = {
        xMm: from.xMm + (chance.next() - 0.5) * 200,
        yMm: from.yMm + (chance.next() - 0.5) * 200,
        turnDeg: from.turnDeg,
      };
      timed("answer", () => held.answer(spot, place.level));
      timed("snap", () => findRoom(held, place.level, spot, 3));
      if (i > 1) continue;
      const moved = movePiece(request, plan, place, spot).plan;
      timed("anew", () => [
        checkPieceIn(sceneOf(request, moved), place.level, place.placement),
        clearances(request, moved, place.level, place.placement),
      ]);
      timed("check", () => checkPlan(request, moved));
    }
  }
  const inOrder = (list: string): number[] => (lists[list] as number[]).sort((a, b) => a - b);
  return {
    pieces: places.length,
    takeUp: inOrder("takeUp"),
    answer: inOrder("answer"),
    anew: inOrder("anew"),
    snap: inOrder("snap"),
    check: inOrder("check"),
  };
}

const share = (list: readonly number[], part: number): number =>
  list[Math.min(list.length - 1, Math.floor(list.length * part))] as number;

/** The table's lines for some loads dragged about. */
export function dragRows(loads: readonly Drags[]): Row[] {
  const ms = (list: readonly number[]): string => `${share(list, 0.5).toFixed(2)} / ${share(list, 0.95).toFixed(2)} ms`;
  const all = (name: "takeUp" | "answer" | "anew" | "snap" | "check"): number[] =>
    loads.flatMap((load) => [...load[name]]).sort((a, b) => a - b);
  const [answer, snap] = [all("answer"), all("snap")];
  const pieces = Math.max(...loads.map((load) => load.pieces));
  return [
    {
      what: `drag, every rule of the piece and its distances, up to ${pieces} pieces: median / p95`,
      target: "p95 ≤ 16 ms",
      found: ms(answer),
      met: share(answer, 0.95) <= 16,
    },
    { what: "  the same asked of the whole plan anew (yardstick)", target: "–", found: ms(all("anew")), met: null },
    {
      what: "  with the snap to a place that keeps every rule",
      target: "p95 ≤ 16 ms",
      found: ms(snap),
      met: share(answer, 0.95) + share(snap, 0.95) <= 16,
    },
    { what: "  taking a piece up", target: "–", found: ms(all("takeUp")), met: null },
    { what: "  the whole load's rules once it is set down", target: "–", found: ms(all("check")), met: null },
  ];
}
