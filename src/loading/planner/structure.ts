import { shelfClearsProbe } from "./columns.ts";
import { drawPosts, type PostStack, type StackHeight } from "./post-stacks.ts";
import { rankedWorth } from "./rank.ts";
import type { Seat } from "./seat.ts";
import type { StructureLevel } from "./structure-level.ts";
import type { LoadTask } from "./task.ts";

/** A way to stack the kiln: shelves and posts from the floor up, before any piece is set down. */
export interface Structure {
  readonly levels: readonly StructureLevel[];
  /** For each level, the three stacks of posts beneath it. */
  readonly stacks: readonly (readonly PostStack[])[];
  /** The value a fractional filling at a usual density would reach: for ranking only. */
  readonly ranked: number;
}

const MOST_LEVELS = 12;
const MOST_LOOKED_AT = 60_000;

interface Growing {
  readonly seat: Seat;
  readonly height: StackHeight;
  readonly topMm: number;
}

/**
 * Ways to stack the kiln, best ranked first. For each level only post heights that let another kind of piece stand on the
 * level beneath are tried, the lowest one or two of each, since lower posts leave more room above.
 *
 * @param keep how many to return
 */
export function structures(task: LoadTask, keep: number): Structure[] {
  const { rules, kiln } = task.request;
  const depth = kiln.chamber.depthMm;
  const pieceHeights = [...new Set(task.kinds.map((kind) => kind.heightMm))].sort((a, b) => a - b);
  const lowest = pieceHeights[0] ?? 0;
  const used = new Int32Array(task.seats.length);
  const kept: Structure[] = [];
  let looked = 0;

  const consider = (levels: readonly Growing[]): void => {
    looked++;
    const whole = levels.map((level, i): StructureLevel => {
      const above = levels[i + 1];
      const clearMm = above
        ? above.topMm - above.seat.shelf.thicknessMm - level.topMm - headroomUnder(task, above.seat)
        : depth - rules.lidMm - level.topMm;
      return { ...level, clearMm };
    });
    const ranked = rankedWorth(task, whole);
    if (kept.length >= keep && ranked <= (kept.at(-1) as Structure).ranked) return;
    const stock = Int32Array.from(task.posts.map((post) => post.count));
    const heights = whole.map((level) => level.height);
    const stacks = drawPosts(stock, heights);
    if (!stacks) return;
    const at = kept.findIndex((each) => each.ranked < ranked);
    kept.splice(at < 0 ? kept.length : at, 0, { levels: whole, stacks, ranked });
    if (kept.length > keep) kept.pop();
  };

  const grow = (levels: Growing[]): void => {
    if (levels.length > 0) consider(levels);
    if (levels.length === MOST_LEVELS || looked > MOST_LOOKED_AT) return;
    const base = levels.at(-1)?.topMm ?? 0;
    for (const [s, seat] of task.seats.entries()) {
      if ((used[s] as number) >= seat.shelf.count) continue;
      used[s] = (used[s] as number) + 1;
      for (const height of usefulHeights(task, seat, base, levels.length === 0, pieceHeights)) {
        const topMm = base + height.totalMm + seat.shelf.thicknessMm;
        if (topMm + lowest > depth - rules.lidMm) break;
        levels.push({ seat, height, topMm });
        grow(levels);
        levels.pop();
      }
      used[s] = (used[s] as number) - 1;
    }
  };
  grow([]);
  return kept;
}

/** Heights for the next shelf, lowest first: at most two for each set of kinds they let stand beneath it. */
function usefulHeights(
  task: LoadTask,
  seat: Seat,
  baseMm: number,
  onFloor: boolean,
  pieceHeights: readonly number[],
): StackHeight[] {
  const { rules } = task.request;
  const useful: StackHeight[] = [];
  let lastClass = -1;
  let inClass = 0;
  for (const height of task.heights) {
    if (onFloor && height.totalMm < rules.floorAirMm) continue;
    const clear = height.totalMm - headroomUnder(task, seat);
    const kinds = onFloor ? 0 : countUpTo(pieceHeights, clear);
    if (!onFloor && kinds === 0) continue;
    if (kinds === lastClass && inClass >= 2) continue;
    const underside = baseMm + height.totalMm;
    const top = underside + seat.shelf.thicknessMm;
    if (!task.probes.every((probe) => shelfClearsProbe(seat.region, underside, top, probe, rules.probeMm))) continue;
    inClass = kinds === lastClass ? inClass + 1 : 1;
    lastClass = kinds;
    useful.push(height);
  }
  return useful;
}

const countUpTo = (sorted: readonly number[], most: number): number => {
  let count = 0;
  while (count < sorted.length && (sorted[count] as number) <= most) count++;
  return count;
};

/** What ware keeps from the shelf above it: the headroom, and where the gap is wider than that shelf, the gap through it. */
function headroomUnder(task: LoadTask, seat: Seat): number {
  const { headroomMm, gapMm } = task.request.rules;
  return Math.max(headroomMm, gapMm - seat.shelf.thicknessMm);
}
