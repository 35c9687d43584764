import type { LoadPlan } from "../../src/loading/load-plan.ts";
import type { LoadRequest } from "../../src/loading/load-request.ts";
import { pieceSolid } from "../../src/ware/solid.ts";
import type { Ware } from "../../src/ware/ware.ts";
import type { PostHeap, PostPlaces, Stack } from "./furniture-by-hand.ts";
import type { LevelByHand } from "./level-by-hand.ts";

/** What waits, kind by kind, and how many of each are still on the bench. */
export class Bench {
  readonly left: Map<Ware, number>;

  constructor(request: LoadRequest) {
    this.left = new Map(request.ware.map((ware) => [ware, ware.count]));
  }

  get kinds(): Ware[] {
    return [...this.left].filter(([, count]) => count > 0).map(([ware]) => ware);
  }
  count = (ware: Ware): number => this.left.get(ware) ?? 0;
  take(ware: Ware): void {
    this.left.set(ware, this.count(ware) - 1);
  }
  putBack(ware: Ware): void {
    this.left.set(ware, this.count(ware) + 1);
  }
}

/** Foot of the piece or its cookie to its top. */
export const fullHeightMm = (ware: Ware): number => pieceSolid(ware).heightMm;

/** The room a piece takes on a shelf with half the gap round it, handle and spout reckoned in. */
export function roomMm2(ware: Ware, gapMm: number): number {
  const across = Math.max(ware.diameterMm, ware.cookie?.diameterMm ?? 0) + gapMm;
  const arms = [ware.handle, ware.spout].reduce((sum, arm) => sum + (arm ? arm.reachMm * (arm.widthMm + gapMm) : 0), 0);
  return (Math.PI * across * across) / 4 + arms;
}

/** Value, with every piece that has to be fired above all others. */
export function importance(request: LoadRequest): (ware: Ware) => number {
  const all = request.ware.reduce((sum, ware) => sum + ware.value * ware.count, 0);
  return (ware) => ware.value + (ware.mustFire ? all + 1 : 0) + 1e-3;
}

/** What she keeps free over a piece: headroom, and never less than keeps the gap through the shelf above. */
export function headroomMm(request: LoadRequest, thicknessMm: number): number {
  return Math.max(request.rules.headroomMm, request.rules.gapMm - thicknessMm) + 1e-6;
}

export interface LoadedLevel {
  readonly level: LevelByHand;
  readonly stack: Stack;
}

/** Writes down what was loaded by hand. */
export function writeDown(
  loaded: readonly LoadedLevel[],
  places: PostPlaces,
  heaps: readonly PostHeap[],
  bench: Bench,
): LoadPlan {
  const value = loaded.reduce(
    (sum, { level }) => sum + level.standing.reduce((part, { ware }) => part + ware.value, 0),
    0,
  );
  return {
    format: "load-plan/1",
    levels: loaded.map(({ level, stack }) => ({
      shelf: level.laid.shelf.name,
      topMm: level.topMm,
      xMm: 0,
      yMm: 0,
      turnDeg: level.laid.turnDeg,
      posts: places.xy.map(([xMm, yMm], i) => ({
        xMm,
        yMm,
        turnDeg: places.turnDeg[i]!,
        heightsMm: stack.heaps.map((heap) => heaps[heap]!.heightMm),
      })),
      placements: level.standing.map(({ placement }) => placement),
    })),
    left: bench.kinds.map((ware) => ({ ware: ware.name, count: bench.count(ware), reason: "no room by hand" })),
    figures: { value },
  };
}
