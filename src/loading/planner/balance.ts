import type { Columns } from "./columns.ts";

// How far inside the triangle of its posts a level's middle of mass is kept: reckoned masses are never exact.
const MARGIN_MM = 5;

/** True where (x, y) lies inside the triangle of the three columns, at least a margin from its edges. */
export function insideTriangle(columns: Columns, x: number, y: number): boolean {
  for (let i = 0; i < 3; i++) {
    const j = (i + 1) % 3;
    const ax = columns.x[i] as number;
    const ay = columns.y[i] as number;
    const ex = (columns.x[j] as number) - ax;
    const ey = (columns.y[j] as number) - ay;
    // The columns run counter-clockwise, so that inside is to the left of every edge.
    if (ex * (y - ay) - ey * (x - ax) < MARGIN_MM * Math.hypot(ex, ey)) return false;
  }
  return true;
}
