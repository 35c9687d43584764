import type { PieceInPlace } from "../../loading/checker/scene.ts";
import { radians } from "../../measures/angle.ts";
import { formOutline } from "../../ware/forms.ts";
import type { Protrusion, Ware } from "../../ware/ware.ts";
import { COLOURS, LINES } from "../page/sheet-style.ts";
import { closedPath, element, pathOf, type SvgNode } from "../svg-writer.ts";
import type { ToPaper } from "./to-paper.ts";

type Point = [number, number];
type Side = readonly (readonly [height: number, radius: number])[];

/**
 * A piece seen from the side, from the front of the kiln: its own profile, or its form's, or a plain cylinder; handle
 * and spout reach as far to the side as they do in the plan, their curves are ours.
 *
 * @param standsAtMm the shelf's face above the floor
 * @param fill its colour: farther pieces a shade darker
 */
export function silhouette(
  piece: Pick<PieceInPlace, "ware" | "x">,
  turnDeg: number,
  standsAtMm: number,
  fill: string,
  paper: ToPaper,
): SvgNode[] {
  const { ware, x } = piece;
  const lift = standsAtMm + (ware.cookie?.thicknessMm ?? 0);
  const side = sideOf(ware);
  const at = (across: number, up: number): [number, number] => [paper.x(x + across), paper.y(lift + up)];
  const look = { fill, stroke: COLOURS.ink, "stroke-width": LINES.fine, "stroke-linejoin": "round" };
  const marks: SvgNode[] = [];
  if (ware.cookie) {
    const half = ware.cookie.diameterMm / 2;
    const [left, top] = at(-half, 0);
    const height = paper.length(ware.cookie.thicknessMm);
    marks.push(
      element("rect", { x: left, y: top, width: paper.length(2 * half), height, ...look, fill: COLOURS.accentPale }),
    );
  }
  if (ware.handle) {
    const ear = earPath(side, ware.heightMm, acrossMm(ware, ware.handle, turnDeg), at);
    const stroke = { d: ear, fill: "none", "stroke-linecap": "butt" };
    marks.push(element("path", { ...stroke, stroke: COLOURS.ink, "stroke-width": 1.3 }));
    marks.push(element("path", { ...stroke, stroke: fill, "stroke-width": 0.8 }));
  }
  if (ware.spout) {
    const across = acrossMm(ware, ware.spout, turnDeg);
    const sign = Math.sign(across) || 1;
    const top = ware.heightMm;
    const points = [
      at(sign * radiusAt(side, 0.5 * top) * 0.9, 0.5 * top),
      at(across, 0.97 * top),
      at(sign * radiusAt(side, 0.85 * top) * 0.9, 0.85 * top),
    ];
    marks.push(element("path", { d: closedPath(points), ...look }));
  }
  const right = side.map(([up, radius]) => at(radius, up));
  const left = side.map(([up, radius]) => at(-radius, up)).reverse();
  const d = pathOf(
    "M",
    ...(right[0] as Point),
    ...curveThrough(right),
    "L",
    ...(left[0] as Point),
    ...curveThrough(left),
    "Z",
  );
  marks.push(element("path", { d, ...look }));
  return marks;
}

function sideOf(ware: Ware): Side {
  if (ware.profile) return ware.profile;
  const drawn = ware.form && formOutline(ware.form, ware).profile;
  const half = ware.diameterMm / 2;
  return (
    drawn ?? [
      [0, half],
      [ware.heightMm, half],
    ]
  );
}

/** How far a handle or spout stands to the right (below zero: left) of the axis, seen from the front. */
function acrossMm(ware: Ware, part: Protrusion, turnDeg: number): number {
  const radius = part.widthMm / 2;
  const along = Math.cos(radians(part.angleDeg + turnDeg));
  return (ware.diameterMm / 2 + part.reachMm - radius) * along + Math.sign(along) * radius;
}

function radiusAt(side: Side, height: number): number {
  for (let i = 1; i < side.length; i += 1) {
    const [lowUp, lowOut] = side[i - 1] as readonly [number, number];
    const [highUp, highOut] = side[i] as readonly [number, number];
    if (height <= highUp) {
      const share = highUp === lowUp ? 1 : (height - lowUp) / (highUp - lowUp);
      return lowOut + share * (highOut - lowOut);
    }
  }
  return side.at(-1)?.[1] ?? 0;
}

/** An ear from high on the side to low on it, reaching `across`. A cubic curve gets three quarters of the way to its controls. */
function earPath(
  side: Side,
  height: number,
  across: number,
  at: (across: number, up: number) => [number, number],
): string {
  const sign = Math.sign(across) || 1;
  const high = 0.86 * height;
  const low = 0.22 * height;
  const from = sign * Math.min(Math.abs(radiusAt(side, high)), Math.abs(across)) * 0.96;
  const to = sign * Math.min(Math.abs(radiusAt(side, low)), Math.abs(across)) * 0.96;
  const control = (edge: number): number => edge + (across - edge) / 0.75;
  return pathOf(
    ...["M", ...at(from, high), "C", ...at(control(from), high + 0.06 * height)],
    ...[...at(control(to), low), ...at(to, low)],
  );
}

/** Cubic curves from the first point through the others (Catmull and Rom's spline; from memory), never past a straight line's ends. */
function curveThrough(points: readonly Point[]): (string | number)[] {
  return points.slice(1).flatMap((to, i) => {
    const from = points[i] as Point;
    const before = points[i - 1] ?? from;
    const after = points[i + 2] ?? to;
    const between = (value: number, a: number, b: number): number =>
      Math.max(Math.min(a, b), Math.min(Math.max(a, b), value));
    const control = (place: Point, a: Point, b: Point, sign: 1 | -1): Point => [
      between(place[0] + (sign * (b[0] - a[0])) / 6, from[0], to[0]),
      between(place[1] + (sign * (b[1] - a[1])) / 6, from[1], to[1]),
    ];
    return ["C", ...control(from, before, to, 1), ...control(to, from, after, -1), ...to];
  });
}
