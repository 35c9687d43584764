import { type BufferGeometry, CubicBezierCurve3, CylinderGeometry, TubeGeometry, Vector3 } from "three";
import type { Protrusion, Ware } from "../../../ware/ware.ts";
import { radiusAt, type Side } from "./side.ts";

// A pulled handle is about as thick as a finger.
const FINGER_MM = 6;

/** An ear from the upper side to the lower, pointing along +x, reaching exactly as far as it was measured. */
export function handleGeometry(ware: Ware, handle: Protrusion, side: Side): BufferGeometry {
  const thick = Math.min(FINGER_MM, handle.widthMm / 2, handle.reachMm * 0.35);
  const [upper, lower] = [0.82 * ware.heightMm, 0.2 * ware.heightMm];
  const [fromUp, fromLow] = [radiusAt(side, upper) - thick, radiusAt(side, lower) - thick];
  const out = ware.diameterMm / 2 + handle.reachMm;
  const curve = new CubicBezierCurve3(
    new Vector3(fromUp, upper, 0),
    new Vector3(out * 1.1, upper, 0),
    new Vector3(out * 1.1, lower + 0.1 * ware.heightMm, 0),
    new Vector3(fromLow, lower, 0),
  );
  const ear = new TubeGeometry(curve, 14, thick, 6);
  ear.scale(1, 1, Math.min(1.5, handle.widthMm / 2 / thick));
  return within(reaching(ear, Math.min(fromUp, fromLow), out), ware.heightMm);
}

/** A tapering pipe from the side up to the height of the rim, pointing along +x. */
export function spoutGeometry(ware: Ware, spout: Protrusion, side: Side): BufferGeometry {
  const root = 0.55 * ware.heightMm;
  const from = Math.max(0, radiusAt(side, root) * 0.75);
  const out = ware.diameterMm / 2 + spout.reachMm;
  const wide = spout.widthMm / 2;
  const length = Math.hypot(out - from, 0.4 * ware.heightMm);
  const pipe = new CylinderGeometry(wide * 0.55, wide, length, 12);
  pipe.translate(0, length / 2, 0);
  pipe.rotateZ(-Math.atan2(out - from, 0.4 * ware.heightMm));
  pipe.translate(from, root, 0);
  return within(reaching(pipe, from, out), ware.heightMm);
}

/** Stretched along x, its nearest place kept, so that its farthest place is where it was measured. */
function reaching(geometry: BufferGeometry, keptX: number, farX: number): BufferGeometry {
  const most = boxOf(geometry).max.x;
  const share = (farX - keptX) / (most - keptX);
  return geometry.translate(-keptX, 0, 0).scale(share, 1, 1).translate(keptX, 0, 0);
}

/** Pressed together between the foot and the rim where it stands out over either. */
function within(geometry: BufferGeometry, heightMm: number): BufferGeometry {
  const { min, max } = boxOf(geometry);
  const bottom = Math.max(0, min.y);
  const share = (Math.min(heightMm, max.y) - bottom) / (max.y - min.y);
  return geometry.translate(0, -min.y, 0).scale(1, share, 1).translate(0, bottom, 0);
}

function boxOf(geometry: BufferGeometry): NonNullable<BufferGeometry["boundingBox"]> {
  geometry.computeBoundingBox();
  return geometry.boundingBox as NonNullable<BufferGeometry["boundingBox"]>;
}
