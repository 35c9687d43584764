import type { Convex } from "./convex-solid.ts";

// Distance between convex solids in space by the algorithm of Gilbert, Johnson and Keerthi (IEEE J. Robotics and
// Automation 4, 1988): walk the Minkowski difference toward the origin, keeping the simplex that holds the nearest point.

const MOST_STEPS = 300;
/** Relative gap between the nearest point found and the best possible at which the walk ends. */
const NEAR_ENOUGH = 1e-10;

const simplex = Array.from({ length: 4 }, () => new Float64Array(3));
const a = new Float64Array(3);
const b = new Float64Array(3);
const fresh = new Float64Array(3);
const nearest = new Float64Array(3);
const candidate = new Float64Array(3);
const kept = new Int32Array(4);
const chosen = new Int32Array(4);

/**
 * The least distance between two convex solids, in the unit of their coordinates; 0 where they meet.
 * Good to about 1e-5 for solids of some hundred units.
 */
export function distanceBetween(first: Convex, second: Convex): number {
  // Start between their middles.
  nearest[0] = (first.foot[0]?.x ?? 0) - (second.foot[0]?.x ?? 0);
  nearest[1] = (first.foot[0]?.y ?? 0) - (second.foot[0]?.y ?? 0);
  nearest[2] = (first.bottom + first.top - second.bottom - second.top) / 2;
  if (square(nearest) < 1e-12) nearest[0] = 1;
  let size = 0;
  let least = Number.POSITIVE_INFINITY;
  for (let step = 0; step < MOST_STEPS; step++) {
    const [vx, vy, vz] = nearest as unknown as [number, number, number];
    first.support(-vx, -vy, -vz, a);
    second.support(vx, vy, vz, b);
    for (let k = 0; k < 3; k++) fresh[k] = (a[k] as number) - (b[k] as number);
    const now = square(nearest);
    // After the first point, v·w bounds the distance from below.
    if (size > 0 && now - dot(nearest, fresh) <= NEAR_ENOUGH * now + 1e-12) return Math.sqrt(now);
    for (let i = 0; i < size; i++) if (same(simplex[i] as Float64Array, fresh)) return Math.sqrt(now);
    (simplex[size] as Float64Array).set(fresh);
    size = nearestOfSimplex(size + 1);
    const after = square(nearest);
    if (size === 4 || after < 1e-14) return 0;
    if (after >= least && step > 3) return Math.sqrt(least);
    least = after;
  }
  return Math.sqrt(least);
}

const square = (v: Float64Array): number => dot(v, v);
const dot = (v: Float64Array, w: Float64Array): number =>
  (v[0] as number) * (w[0] as number) + (v[1] as number) * (w[1] as number) + (v[2] as number) * (w[2] as number);
const same = (v: Float64Array, w: Float64Array): boolean =>
  Math.abs((v[0] as number) - (w[0] as number)) +
    Math.abs((v[1] as number) - (w[1] as number)) +
    Math.abs((v[2] as number) - (w[2] as number)) <
  1e-11;

/**
 * Puts the point of the simplex nearest the origin into `nearest` and drops the corners that do not hold it. Every face is
 * tried: a corner, an edge, a triangle whose own nearest point lies inside it; the nearest of them all is the answer.
 *
 * @returns how many corners are left; 4 where the origin lies inside
 */
function nearestOfSimplex(count: number): number {
  if (count === 4 && holdsOrigin()) return 4;
  let best = Number.POSITIVE_INFINITY;
  let keep = 0;
  for (let mask = 1; mask < 1 << count; mask++) {
    let members = 0;
    for (let i = 0; i < count; i++) if (mask & (1 << i)) chosen[members++] = i;
    if (members > 3 || !faceNearest(members)) continue;
    const found = square(candidate);
    if (found < best - 1e-15 * best || best === Number.POSITIVE_INFINITY) {
      best = found;
      nearest.set(candidate);
      keep = members;
      for (let i = 0; i < members; i++) kept[i] = chosen[i] as number;
    }
  }
  for (let i = 0; i < keep; i++) {
    const from = kept[i] as number;
    if (from !== i) (simplex[i] as Float64Array).set(simplex[from] as Float64Array);
  }
  return keep;
}

/** The nearest point of one face to the origin, into `candidate`; false where it lies outside the face. */
function faceNearest(members: number): boolean {
  const p = simplex[chosen[0] as number] as Float64Array;
  if (members === 1) {
    candidate.set(p);
    return true;
  }
  const q = simplex[chosen[1] as number] as Float64Array;
  if (members === 2) {
    const along = dot(p, p) - dot(p, q);
    const length2 = dot(p, p) - 2 * dot(p, q) + dot(q, q);
    if (length2 < 1e-24) return false;
    const s = along / length2;
    if (s <= 0 || s >= 1) return false;
    for (let k = 0; k < 3; k++) candidate[k] = (p[k] as number) + s * ((q[k] as number) - (p[k] as number));
    return true;
  }
  const r = simplex[chosen[2] as number] as Float64Array;
  let uu = 0;
  let uv = 0;
  let vv = 0;
  let up = 0;
  let vp = 0;
  for (let k = 0; k < 3; k++) {
    const u = (q[k] as number) - (p[k] as number);
    const v = (r[k] as number) - (p[k] as number);
    uu += u * u;
    uv += u * v;
    vv += v * v;
    up -= u * (p[k] as number);
    vp -= v * (p[k] as number);
  }
  const spread = uu * vv - uv * uv;
  if (spread < 1e-14 * uu * vv) return false;
  const s = (up * vv - vp * uv) / spread;
  const t = (vp * uu - up * uv) / spread;
  if (s <= 0 || t <= 0 || s + t >= 1) return false;
  for (let k = 0; k < 3; k++) {
    candidate[k] =
      (p[k] as number) + s * ((q[k] as number) - (p[k] as number)) + t * ((r[k] as number) - (p[k] as number));
  }
  return true;
}

/** True where the origin lies inside the four corners: on the inner side of every face. */
function holdsOrigin(): boolean {
  for (let out = 0; out < 4; out++) {
    const [p, q, r] = [0, 1, 2, 3].filter((i) => i !== out).map((i) => simplex[i] as Float64Array) as [
      Float64Array,
      Float64Array,
      Float64Array,
    ];
    const ux = (q[0] as number) - (p[0] as number);
    const uy = (q[1] as number) - (p[1] as number);
    const uz = (q[2] as number) - (p[2] as number);
    const vx = (r[0] as number) - (p[0] as number);
    const vy = (r[1] as number) - (p[1] as number);
    const vz = (r[2] as number) - (p[2] as number);
    const nx = uy * vz - uz * vy;
    const ny = uz * vx - ux * vz;
    const nz = ux * vy - uy * vx;
    const s = simplex[out] as Float64Array;
    const there =
      nx * ((s[0] as number) - (p[0] as number)) +
      ny * ((s[1] as number) - (p[1] as number)) +
      nz * ((s[2] as number) - (p[2] as number));
    const here = -(nx * (p[0] as number) + ny * (p[1] as number) + nz * (p[2] as number));
    if (Math.abs(there) < 1e-12 || there * here < 0) return false;
  }
  return true;
}
