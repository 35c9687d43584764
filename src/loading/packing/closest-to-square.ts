import { closest } from "./closest.ts";

/**
 * Closest approach of a segment (from px, py along qx, qy; it may be a point) to a square about the origin, sides along the
 * axes. Exact: the distance is taken at both ends, at the square's four corners, and where the segment passes the middle.
 *
 * @param half half the square's side
 * @returns the distance, below zero by how deep the segment goes in; `closest` holds the share along the segment (s) and
 * the unit vector away from the square (dx, dy)
 */
export function closestToSquare(px: number, py: number, qx: number, qy: number, half: number): number {
  const length2 = qx * qx + qy * qy;
  let least = fromPoint(px, py, half);
  closest.s = 0;
  closest.dx = away.x;
  closest.dy = away.y;
  if (length2 === 0) return least;
  for (let end = 0; end < 2; end++) {
    const s = end === 0 ? 1 : Math.min(1, Math.max(0, -(px * qx + py * qy) / length2));
    const distance = fromPoint(px + s * qx, py + s * qy, half);
    if (distance >= least) continue;
    least = distance;
    closest.s = s;
    closest.dx = away.x;
    closest.dy = away.y;
  }
  if (least <= 0) return least;
  for (let corner = 0; corner < 4; corner++) {
    const cx = corner & 1 ? half : -half;
    const cy = corner & 2 ? half : -half;
    const s = Math.min(1, Math.max(0, ((cx - px) * qx + (cy - py) * qy) / length2));
    const mx = px + s * qx - cx;
    const my = py + s * qy - cy;
    const apart = Math.sqrt(mx * mx + my * my);
    // A segment that cuts a corner off passes inside it, though both its ends and its middle may lie outside.
    const cuts = Math.abs(cx + mx) < half && Math.abs(cy + my) < half;
    const distance = cuts ? -apart : apart;
    if (distance >= least || apart <= 1e-9) continue;
    least = distance;
    closest.s = s;
    closest.dx = mx / distance;
    closest.dy = my / distance;
  }
  return least;
}

/** Away from the square, for the last point asked about. */
const away = { x: 1, y: 0 };

function fromPoint(ex: number, ey: number, half: number): number {
  const ox = Math.abs(ex) - half;
  const oy = Math.abs(ey) - half;
  if (ox > 0 && oy > 0) {
    const distance = Math.sqrt(ox * ox + oy * oy);
    away.x = (ex < 0 ? -ox : ox) / distance;
    away.y = (ey < 0 ? -oy : oy) / distance;
    return distance;
  }
  if (ox > oy) {
    away.x = ex < 0 ? -1 : 1;
    away.y = 0;
    return ox;
  }
  away.x = 0;
  away.y = ey < 0 ? -1 : 1;
  return oy;
}
