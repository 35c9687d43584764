import { type BufferGeometry, LatheGeometry, Vector2 } from "three";
import { mergeGeometries } from "three/addons/utils/BufferGeometryUtils.js";
import { radians } from "../../../measures/angle.ts";
import type { Ware } from "../../../ware/ware.ts";
import { handleGeometry, spoutGeometry } from "./protruding-geometry.ts";
import { isOpen, rounded, type Side, sideOf } from "./side.ts";

// A thrown wall as it is drawn. Common practice, no source; the rules never ask for it.
const WALL_MM = 4;
// A circle is drawn with as many flat sides as keep within this of it, which is less than a dot of any screen.
const OFF_THE_CIRCLE_MM = 0.35;
const FEWEST_SIDES = 12;
const MOST_SIDES = 48;

/** How many flat sides a circle of a radius is drawn with. */
export function sidesFor(radiusMm: number): number {
  const most = Math.acos(1 - Math.min(1, OFF_THE_CIRCLE_MM / radiusMm));
  return Math.min(MOST_SIDES, Math.max(FEWEST_SIDES, 4 * Math.ceil(Math.PI / most / 4)));
}

/**
 * One piece of a kind as a mesh about its own axis, its foot (or its cookie's) at height 0. Millimetres; the renderer's
 * axes: x to the right, y up, z toward the potter, which is the kiln's −y.
 */
export function pieceGeometry(ware: Ware): BufferGeometry {
  const side = rounded(sideOf(ware));
  const lift = ware.cookie?.thicknessMm ?? 0;
  const parts: BufferGeometry[] = body(side, isOpen(ware));
  if (ware.handle) parts.push(handleGeometry(ware, ware.handle, side).rotateY(radians(ware.handle.angleDeg)));
  if (ware.spout) parts.push(spoutGeometry(ware, ware.spout, side).rotateY(radians(ware.spout.angleDeg)));
  for (const part of parts) part.translate(0, lift, 0);
  if (ware.cookie) parts.push(...disc(ware.cookie.diameterMm / 2, ware.cookie.thicknessMm));
  const whole = mergeGeometries(parts);
  for (const part of parts) part.dispose();
  whole.computeBoundingBox();
  whole.computeBoundingSphere();
  return whole;
}

/** Foot, outside and, where it is open, rim, inside and bottom: each smooth by itself, with sharp edges between. */
function body(side: Side, open: boolean): BufferGeometry[] {
  const foot = side[0] as Side[number];
  const rim = side.at(-1) as Side[number];
  const runs: Side[] = [
    [
      [foot[0], 0],
      [foot[0], foot[1]],
    ],
    side,
  ];
  const hollow = open ? insideOf(side) : null;
  if (hollow) {
    const lip = hollow[0] as Side[number];
    const bottom = hollow.at(-1) as Side[number];
    runs.push([rim, lip], hollow, [bottom, [bottom[0], 0]]);
  } else {
    runs.push([rim, [rim[0], 0]]);
  }
  return runs.filter((run) => run.some(([, radius]) => radius > 0)).map(turned);
}

/** The hollow from the lip down to the bottom; null where there is no room for one. */
function insideOf(side: Side): Side | null {
  const rim = side.at(-1) as Side[number];
  const wall = Math.min(WALL_MM, rim[1] * 0.3);
  const floor = (side[0] as Side[number])[0] + Math.min(WALL_MM, rim[0] * 0.3);
  const inside = side
    .filter(([height, radius]) => height > floor && radius > wall)
    .map(([height, radius]) => [height, radius - wall] as const)
    .reverse();
  const lowest = inside.at(-1);
  if (rim[1] <= wall || !lowest) return null;
  const across = Math.max(0, radiusOnFloor(side, floor) - wall);
  return lowest[0] > floor ? [...inside, [floor, across]] : inside;
}

function radiusOnFloor(side: Side, floorMm: number): number {
  const above = side.findIndex(([height]) => height >= floorMm);
  const [, radius] = side[Math.max(0, above)] as Side[number];
  return radius;
}

function disc(radiusMm: number, heightMm: number): BufferGeometry[] {
  const rim: Side = [
    [0, radiusMm],
    [heightMm, radiusMm],
  ];
  return body(rim, false);
}

const turned = (run: Side): BufferGeometry =>
  new LatheGeometry(
    run.map(([height, radius]) => new Vector2(radius, height)),
    sidesFor(Math.max(...run.map(([, radius]) => radius))),
  );
