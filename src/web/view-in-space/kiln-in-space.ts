import { BufferGeometry, CircleGeometry, CylinderGeometry, Float32BufferAttribute, Quaternion, Vector3 } from "three";
import { chamberRegion } from "../../kiln/convex-region.ts";
import type { Kiln, Probe, Spyhole } from "../../kiln/kiln.ts";
import { probeLine, spyholeMouth } from "../../kiln/wall-fittings.ts";
import { outlineOf } from "./solids/outline.ts";
import { slabGeometry } from "./solids/slab-geometry.ts";

const FLOOR_MM = 6;
const PROBE_RADIUS_MM = 4;
/** A mouth is drawn a hair inside the wall, or the two would flicker. */
const OFF_THE_WALL_MM = 1.5;

/** The chamber's wall, without floor or lid: faces outward, to be seen from within. */
export function wallGeometry({ chamber }: Kiln): BufferGeometry {
  return slabGeometry(outlineOf(chamberRegion(chamber)), 0, chamber.depthMm, "walls");
}

export function floorGeometry({ chamber }: Kiln): BufferGeometry {
  return slabGeometry(outlineOf(chamberRegion(chamber)), -FLOOR_MM, 0);
}

/** Lines along the wall's upper and lower edge, and along its corners where it has any, as pairs of ends. */
export function edgeLines({ chamber }: Kiln): BufferGeometry {
  const outline = outlineOf(chamberRegion(chamber));
  const ends: number[] = [];
  outline.forEach(([x, y], i) => {
    const [nextX, nextY] = outline[(i + 1) % outline.length] as readonly [number, number];
    for (const height of [0, chamber.depthMm]) ends.push(x, height, -y, nextX, height, -nextY);
    if (chamber.shape !== "round") ends.push(x, 0, -y, x, chamber.depthMm, -y);
  });
  return new BufferGeometry().setAttribute("position", new Float32BufferAttribute(ends, 3));
}

/** A probe as a thin rod from the wall to its tip. */
export function probeGeometry(kiln: Kiln, probe: Probe): BufferGeometry {
  const { wallX, wallY, tipX, tipY, heightMm } = probeLine(kiln.chamber, probe);
  const rod = new CylinderGeometry(PROBE_RADIUS_MM, PROBE_RADIUS_MM, Math.hypot(wallX - tipX, wallY - tipY), 10);
  const along = new Vector3(wallX - tipX, 0, -(wallY - tipY)).normalize();
  rod.applyQuaternion(new Quaternion().setFromUnitVectors(new Vector3(0, 1, 0), along));
  return rod.translate((wallX + tipX) / 2, heightMm, -(wallY + tipY) / 2);
}

/** A spyhole's mouth as a disc in the wall, facing inward. */
export function spyholeGeometry(kiln: Kiln, spyhole: Spyhole): BufferGeometry {
  const { x, y, heightMm, radiusMm, nx, ny } = spyholeMouth(kiln.chamber, spyhole);
  const mouth = new CircleGeometry(radiusMm, 24);
  mouth.applyQuaternion(new Quaternion().setFromUnitVectors(new Vector3(0, 0, 1), new Vector3(-nx, 0, ny)));
  return mouth.translate(x - nx * OFF_THE_WALL_MM, heightMm, -(y - ny * OFF_THE_WALL_MM));
}
