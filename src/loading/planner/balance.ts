import type { LoadTask } from "./task.ts";

/** How far inside the triangle of its posts a level's middle of mass is kept: reckoned masses are never exact. */
export const MARGIN_MM = 5;

/** What carries a level, seen from above, from the stand's middle. */
export interface Footing {
  /** The axes of its three posts, counter-clockwise; null where they make no triangle, and nothing can be asked. */
  readonly triangle: { readonly x: readonly number[]; readonly y: readonly number[] } | null;
  readonly shelfKg: number;
  readonly shelfX: number;
  readonly shelfY: number;
}

/** How far inside the triangle of its posts the middle of mass of a shelf and its ware lies; below zero outside. */
export function insideByMm(
  task: LoadTask,
  { triangle, shelfKg, shelfX, shelfY }: Footing,
  kindOf: Int32Array,
  count: number,
  places: Float64Array,
): number {
  if (!triangle) return Number.POSITIVE_INFINITY;
  let mass = shelfKg;
  let x = shelfKg * shelfX;
  let y = shelfKg * shelfY;
  for (let i = 0; i < count; i++) {
    const { massKg } = task.kinds[kindOf[i] as number] as LoadTask["kinds"][number];
    mass += massKg;
    x += massKg * (places[3 * i] as number);
    y += massKg * (places[3 * i + 1] as number);
  }
  x /= mass;
  y /= mass;
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i < 3; i++) {
    const j = (i + 1) % 3;
    const ax = triangle.x[i] as number;
    const ay = triangle.y[i] as number;
    const ex = (triangle.x[j] as number) - ax;
    const ey = (triangle.y[j] as number) - ay;
    // The posts run counter-clockwise, so that inside is to the left of every edge.
    least = Math.min(least, (ex * (y - ay) - ey * (x - ax)) / Math.hypot(ex, ey));
  }
  return least;
}
