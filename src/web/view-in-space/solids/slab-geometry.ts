import { BufferGeometry, Float32BufferAttribute } from "three";
import type { PlanPoint } from "./outline.ts";

/** Which faces to make. */
export type Faces = "all" | "walls";

/**
 * An upright block with a convex outline between two heights, each face flat. Millimetres; the renderer's axes.
 *
 * @param outline corners counter-clockwise, seen from above
 */
export function slabGeometry(
  outline: readonly PlanPoint[],
  bottomMm: number,
  topMm: number,
  faces: Faces = "all",
): BufferGeometry {
  const places: number[] = [];
  const directions: number[] = [];
  const corner = ([x, y]: PlanPoint, height: number, normal: readonly [number, number, number]): void => {
    places.push(x, height, -y);
    directions.push(...normal);
  };
  const first = outline[0] as PlanPoint;
  outline.forEach((from, i) => {
    const to = outline[(i + 1) % outline.length] as PlanPoint;
    const length = Math.hypot(to[0] - from[0], to[1] - from[1]) || 1;
    const out = [(to[1] - from[1]) / length, 0, (to[0] - from[0]) / length] as const;
    for (const [point, height] of [
      [from, bottomMm],
      [to, bottomMm],
      [to, topMm],
      [from, bottomMm],
      [to, topMm],
      [from, topMm],
    ] as const) {
      corner(point, height, out);
    }
    if (faces === "walls" || i === 0 || i === outline.length - 1) return;
    for (const point of [first, from, to]) corner(point, topMm, [0, 1, 0]);
    for (const point of [first, to, from]) corner(point, bottomMm, [0, -1, 0]);
  });
  const geometry = new BufferGeometry();
  geometry.setAttribute("position", new Float32BufferAttribute(places, 3));
  geometry.setAttribute("normal", new Float32BufferAttribute(directions, 3));
  return geometry;
}
