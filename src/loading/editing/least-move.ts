import { CLEARANCE_TOLERANCE_MM } from "../checker/broken.ts";
import type { PieceInPlace, Scene } from "../checker/scene.ts";
import { wallDistanceMm } from "../rules/gap.ts";
import { shelvesAbove } from "../rules/headroom.ts";
import { edgeMarginMm } from "../rules/shelf-edge.ts";
import { mouthDistanceMm } from "../solids/mouth-distance.ts";
import { planDistanceMm } from "../solids/plan-distance.ts";
import { solidDistanceMm, widestMm } from "../solids/upright.ts";

/**
 * How far sideways a piece would have to be moved at least before it could keep every rule. No distance in space changes
 * by more than the piece is moved, so what is missing to the worst of them is missing in the move too.
 *
 * @param enoughMm more than this need not be told exactly
 * @returns millimetres; zero where it keeps every rule; infinite where it is too tall for the lid
 */
export function leastMoveMm(
  scene: Scene,
  piece: PieceInPlace,
  others: readonly PieceInPlace[],
  enoughMm = Number.POSITIVE_INFINITY,
): number {
  const { rules } = scene;
  const { solid } = piece;
  if (rules.lidMm - (scene.depthMm - solid.topMm) > CLEARANCE_TOLERANCE_MM) return Number.POSITIVE_INFINITY;
  // The worst so far: what is farther off than to miss more needs no exact look.
  let worst = CLEARANCE_TOLERANCE_MM;
  const hear = (leastMm: number, distanceMm: number): boolean => {
    worst = Math.max(worst, leastMm - distanceMm);
    return worst > enoughMm;
  };
  if (hear(0, edgeMarginMm(scene, piece))) return worst;
  if (hear(rules.gapMm, wallDistanceMm(scene, solid))) return worst;
  for (const other of others) {
    if (hear(rules.gapMm, solidDistanceMm(solid, other.solid, rules.gapMm - worst))) return worst;
  }
  for (const post of scene.posts) {
    if (post.level === piece.level) continue;
    if (hear(rules.gapMm, solidDistanceMm(solid, post.solid, rules.gapMm - worst))) return worst;
  }
  for (const probe of scene.probes) {
    if (hear(rules.probeMm, solidDistanceMm(solid, probe.solid, rules.probeMm - worst))) return worst;
  }
  for (const { mouth } of scene.mouths) {
    if (hear(rules.spyholeMm, mouthDistanceMm(solid, mouth, rules.spyholeMm - worst))) return worst;
  }
  for (const shelf of shelvesAbove(scene, piece)) {
    const distanceMm = solidDistanceMm(solid, shelf.solid, rules.headroomMm - worst);
    if (rules.headroomMm - distanceMm <= CLEARANCE_TOLERANCE_MM) continue;
    hear(rules.headroomMm, distanceMm);
    if (hear(0, -outFromUnderMm(scene, piece, shelf))) return worst;
  }
  return worst > CLEARANCE_TOLERANCE_MM ? worst : 0;
}

/**
 * How far a piece that is too tall for a shelf above it has to go to stand clear of it altogether: the distance in space
 * tells only how much too tall it is, which would have every place under that shelf looked at.
 */
function outFromUnderMm({ rules }: Scene, piece: PieceInPlace, shelf: Scene["shelves"][number]): number {
  const slab = shelf.solid.parts[0];
  let out = 0;
  if (!slab) return out;
  for (const part of piece.solid.parts) {
    const [topMm, radiusMm] = part.rings.at(-1) as readonly [number, number];
    const room = shelf.undersideMm - topMm;
    if (room >= rules.headroomMm || topMm > shelf.topMm) continue;
    const beside = Math.sqrt(rules.headroomMm ** 2 - Math.max(0, room) ** 2);
    out = Math.max(out, beside - (planDistanceMm(part.core, slab.core) - radiusMm - widestMm(slab)));
  }
  return out;
}
