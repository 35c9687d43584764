import { type ConvexRegion, regionCorners } from "../../kiln/convex-region.ts";

/** A disc of a footprint; a footprint is everything between its discs. */
export interface FootDisc {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
}

/**
 * A convex solid, told by its farthest point in any direction. `support` writes that point into `out`.
 * `foot` is its outline seen from above as discs with everything between them; z runs from `bottom` to `top`.
 */
export interface Convex {
  readonly foot: readonly FootDisc[];
  readonly bottom: number;
  readonly top: number;
  support(dx: number, dy: number, dz: number, out: Float64Array): void;
}

/** A frustum about an upright axis: radius `r0` at height `z0`, `r1` at `z1`. A cylinder where both are alike. */
export function frustum(x: number, y: number, z0: number, r0: number, z1: number, r1: number): Convex {
  return {
    foot: [{ x, y, radius: Math.max(r0, r1) }],
    bottom: z0,
    top: z1,
    support(dx, dy, dz, out) {
      const flat = Math.hypot(dx, dy);
      const upper = r1 * flat + z1 * dz >= r0 * flat + z0 * dz;
      const radius = flat > 0 ? (upper ? r1 : r0) / flat : 0;
      out[0] = x + radius * dx;
      out[1] = y + radius * dy;
      out[2] = upper ? z1 : z0;
    },
  };
}

/** An upright prism on a footprint of discs: a stadium (two discs), a square (four of no size). */
export function prism(foot: readonly FootDisc[], bottom: number, top: number): Convex {
  return {
    foot,
    bottom,
    top,
    support(dx, dy, dz, out) {
      const flat = Math.hypot(dx, dy);
      let most = Number.NEGATIVE_INFINITY;
      for (const disc of foot) {
        const along = disc.x * dx + disc.y * dy + disc.radius * flat;
        if (along <= most) continue;
        most = along;
        out[0] = disc.x + (flat > 0 ? (disc.radius * dx) / flat : 0);
        out[1] = disc.y + (flat > 0 ? (disc.radius * dy) / flat : 0);
      }
      out[2] = dz >= 0 ? top : bottom;
    },
  };
}

/** An upright prism on a convex region: a shelf. */
export function slab(region: ConvexRegion, bottom: number, top: number): Convex {
  const corners = regionPoints(region);
  const { circle } = region;
  return {
    foot: circle && region.sides.length === 0 ? [circle] : corners.map(([x, y]) => ({ x, y, radius: 0 })),
    bottom,
    top,
    support(dx, dy, dz, out) {
      const flat = Math.hypot(dx, dy);
      let most = Number.NEGATIVE_INFINITY;
      for (const [x, y] of corners) {
        if (x * dx + y * dy <= most) continue;
        most = x * dx + y * dy;
        out[0] = x;
        out[1] = y;
      }
      if (circle) {
        const x = circle.x + (flat > 0 ? (circle.radius * dx) / flat : 0);
        const y = circle.y + (flat > 0 ? (circle.radius * dy) / flat : 0);
        const within = region.sides.every((side) => side.nx * x + side.ny * y <= side.offset + 1e-9);
        if (within && x * dx + y * dy > most) {
          out[0] = x;
          out[1] = y;
        }
      }
      out[2] = dz >= 0 ? top : bottom;
    },
  };
}

/** A straight line in space, no thickness. */
export function line(a: readonly [number, number, number], b: readonly [number, number, number]): Convex {
  return {
    foot: [
      { x: a[0], y: a[1], radius: 0 },
      { x: b[0], y: b[1], radius: 0 },
    ],
    bottom: Math.min(a[2], b[2]),
    top: Math.max(a[2], b[2]),
    support(dx, dy, dz, out) {
      const [x, y, z] = a[0] * dx + a[1] * dy + a[2] * dz >= b[0] * dx + b[1] * dy + b[2] * dz ? a : b;
      out[0] = x;
      out[1] = y;
      out[2] = z;
    },
  };
}

/** An upright disc, no thickness, square to the level direction (nx, ny): a spyhole's mouth. */
export function uprightDisc(x: number, y: number, z: number, radius: number, nx: number, ny: number): Convex {
  return {
    foot: [
      { x: x - ny * radius, y: y + nx * radius, radius: 0 },
      { x: x + ny * radius, y: y - nx * radius, radius: 0 },
    ],
    bottom: z - radius,
    top: z + radius,
    support(dx, dy, dz, out) {
      const across = -ny * dx + nx * dy;
      const length = Math.hypot(across, dz);
      const scale = length > 0 ? radius / length : 0;
      out[0] = x - ny * across * scale;
      out[1] = y + nx * across * scale;
      out[2] = z + dz * scale;
    },
  };
}

/** The corners of a region: where its sides meet each other, or its circle. Empty for a plain disc. */
export function regionPoints(region: ConvexRegion): [number, number][] {
  const { circle, sides } = region;
  if (!circle) return regionCorners(region);
  const points: [number, number][] = [];
  for (const side of sides) {
    const away = side.offset - side.nx * circle.x - side.ny * circle.y;
    const half = Math.sqrt(Math.max(0, circle.radius ** 2 - away ** 2));
    for (const along of [half, -half]) {
      points.push([circle.x + side.nx * away - side.ny * along, circle.y + side.ny * away + side.nx * along]);
    }
  }
  return points.filter(([x, y]) => sides.every((side) => side.nx * x + side.ny * y <= side.offset + 1e-9));
}
