// Closest points between two segments in the plane. The results are left in `closest`, so that the search allocates nothing.

/** Where the last call found its closest points: shares along each segment, and the vector from the second to the first. */
export const closest = { s: 0, t: 0, dx: 0, dy: 0 };

const clamp = (value: number): number => (value < 0 ? 0 : Math.min(1, value));

/**
 * Closest points of segments a (from ax, ay along ux, uy) and b (from bx, by along vx, vy); either may be a point.
 * Ericson, Real-Time Collision Detection (2005), section 5.1.9.
 *
 * @returns the squared distance; `closest` holds where
 */
export function closestOnSegments(
  ax: number,
  ay: number,
  ux: number,
  uy: number,
  bx: number,
  by: number,
  vx: number,
  vy: number,
): number {
  const rx = ax - bx;
  const ry = ay - by;
  const a = ux * ux + uy * uy;
  const e = vx * vx + vy * vy;
  const f = vx * rx + vy * ry;
  let s = 0;
  let t = 0;
  if (a <= 1e-12) t = e <= 1e-12 ? 0 : clamp(f / e);
  else {
    const c = ux * rx + uy * ry;
    if (e <= 1e-12) s = clamp(-c / a);
    else {
      const b = ux * vx + uy * vy;
      const spread = a * e - b * b;
      s = spread > 1e-9 * a * e ? clamp((b * f - c * e) / spread) : 0;
      t = (b * s + f) / e;
      if (t < 0) {
        t = 0;
        s = clamp(-c / a);
      } else if (t > 1) {
        t = 1;
        s = clamp((b - c) / a);
      }
    }
  }
  const dx = rx + s * ux - t * vx;
  const dy = ry + s * uy - t * vy;
  closest.s = s;
  closest.t = t;
  closest.dx = dx;
  closest.dy = dy;
  return dx * dx + dy * dy;
}
