import { formatLength } from "../../measures/length.ts";
import { acrossMm, tallestPossibleMm, widestShelfMm } from "./reach.ts";
import type { LoadTask } from "./task.ts";

/** Why no load can be made at all. */
export interface Impossible {
  readonly code: string;
  readonly message: string;
}

const mm = (length: number): string => formatLength(length, "metric");

/** Every plain reason why nothing can be loaded, each with the numbers and what would do. */
export function whyImpossible(task: LoadTask): Impossible[] {
  const { furniture, kiln, rules } = task.request;
  const full = furniture.shelves.filter((shelf) => shelf.count > 0);
  if (full.length === 0)
    return [reason("no-shelves", "There is no shelf to load. Give at least one shelf with a count.")];
  if (full.every((shelf) => shelf.shape === "half-disc")) {
    return [
      reason(
        "half-shelves-only",
        "There are only half shelves, which are not planned yet. Give at least one full shelf.",
      ),
    ];
  }
  if (task.seats.length === 0) {
    return [
      reason(
        "shelves-too-wide",
        `No shelf lies in the chamber with ${mm(rules.shelfWallMm)} to the wall all round. Use a smaller shelf, or a smaller shelfWallMm if the shelf is known to go in.`,
      ),
    ];
  }
  if (task.posts.reduce((sum, post) => sum + post.count, 0) < 3) {
    return [reason("too-few-posts", "A shelf stands on three posts, and there are fewer than three. Add posts.")];
  }
  const legal = task.heights.filter((height) => height.totalMm >= rules.floorAirMm);
  if (legal.length === 0) {
    return [
      reason(
        "posts-too-low",
        `No post or pair of posts lifts the lowest shelf ${mm(rules.floorAirMm)} off the floor. Add taller posts.`,
      ),
    ];
  }
  if (!task.posts.some((post) => post.count >= 3) && !legal.some((height) => height.ways.length > 1)) {
    return [
      reason("no-three-alike", "No three posts or stacks of posts reach one height. Add posts of the same height."),
    ];
  }
  const reasons: Impossible[] = [];
  const tallest = tallestPossibleMm(task, task.heights);
  if (tallest.withStockMm === Number.NEGATIVE_INFINITY) {
    return [
      reason(
        "probe-in-the-way",
        `No height of posts keeps a shelf ${mm(rules.probeMm)} from the probe at ${task.probes.map((probe) => mm(probe.heightMm)).join(" and ")}. Use a smaller shelf or posts that pass the probe, or check its height and reach.`,
      ),
    ];
  }
  const widest = widestShelfMm(task);
  task.request.ware.forEach((ware, kind) => {
    const piece = task.kinds[kind] as LoadTask["kinds"][number];
    const across = acrossMm(piece);
    if (across > widest) {
      reasons.push(
        reason(
          "too-wide",
          `${ware.name} needs ${mm(across)}; the widest shelf gives ${mm(widest)}. Use a wider shelf, fire it on edge in a bisque, or leave it out.`,
        ),
      );
    } else if (piece.heightMm > tallest.withStockMm) {
      reasons.push(
        reason(
          "too-tall",
          `${ware.name} stands ${mm(piece.heightMm)} tall; the lowest shelf leaves ${mm(Math.max(0, tallest.withStockMm))} under the lid of ${kiln.name}. Use lower posts, fire it in a taller kiln, or leave it out.`,
        ),
      );
    }
  });
  if (reasons.length > 0) return reasons;
  return [
    reason(
      "no-structure",
      "No arrangement of these shelves and posts gives any waiting piece a legal place: three columns of posts cannot keep clear of the probe, or each piece meets a probe, a spyhole or the wall wherever it stands. Add posts of other heights, or check where the probes and spyholes are.",
    ),
  ];
}

const reason = (code: string, message: string): Impossible => ({ code, message });
