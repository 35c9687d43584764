import { type ConvexRegion, chamberRegion, placedRegion, shelfRegion } from "../../kiln/convex-region.ts";
import type { Placement } from "../../loading/load-plan.ts";
import type { WareFile } from "../../ware/ware.ts";
import { type Place, placementAt } from "../loads/places.ts";
import type { LoadRecord } from "../records/load-record.ts";

/** Where a piece stood, as far as it matters to the fire. Distances are between solids, mm; handles left out. */
export interface PiecePlace {
  readonly ware: WareFile;
  /** From the floor, 0 to 1, by the shelf's height in the chamber. */
  readonly heightShare: number;
  readonly levels: number;
  /** To the nearest other piece on its shelf; null where it stood alone. */
  readonly neighbourMm: number | null;
  readonly neighbour: string | null;
  /** To the chamber's wall, where the elements are. */
  readonly wallMm: number;
  /** Inside its shelf's edge; below 0 it reached over. */
  readonly edgeMm: number;
  /** From the chamber's axis. */
  readonly axisMm: number;
  /** Seen from above, counter-clockwise from +x. */
  readonly angleDeg: number;
  /** Whether a shelf was over it. */
  readonly underShelf: boolean;
}

/** Where the piece at a place of a load's plan stood, or null where there is none. */
export function piecePlace({ request, plan }: Pick<LoadRecord, "request" | "plan">, place: Place): PiecePlace | null {
  const piece = placementAt(plan, place);
  const level = plan?.levels[place.level];
  const wares = new Map(request.ware.map((each) => [each.name, each]));
  const ware = piece && wares.get(piece.ware);
  if (!plan || !piece || !level || !ware) return null;
  const radius = ware.diameterMm / 2;
  const others = level.placements.flatMap((other, i) => {
    const its = wares.get(other.ware);
    return i === place.placement || !its ? [] : [{ other, mm: apart(piece, other) - radius - its.diameterMm / 2 }];
  });
  const [near] = others.sort((a, b) => a.mm - b.mm);
  const shelf = request.furniture.shelves.find(({ name }) => name === level.shelf);
  const { chamber } = request.kiln;
  return {
    ware,
    heightShare: Math.min(1, level.topMm / chamber.depthMm),
    levels: plan.levels.length,
    neighbourMm: near?.mm ?? null,
    neighbour: near?.other.ware ?? null,
    wallMm: insideMm(chamberRegion(chamber), piece) - radius,
    edgeMm: shelf
      ? insideMm(placedRegion(shelfRegion(shelf), level.xMm, level.yMm, level.turnDeg), piece) - radius
      : Number.POSITIVE_INFINITY,
    axisMm: Math.hypot(piece.xMm, piece.yMm),
    angleDeg: ((Math.atan2(piece.yMm, piece.xMm) * 180) / Math.PI + 360) % 360,
    underShelf: plan.levels.some(({ topMm }) => topMm > level.topMm),
  };
}

const apart = (a: Placement, b: Placement): number => Math.hypot(a.xMm - b.xMm, a.yMm - b.yMm);

/** How far inside a region a point is: to the nearest of its sides or its round edge. */
function insideMm({ sides, circle }: ConvexRegion, { xMm, yMm }: Placement): number {
  const inside = sides.map(({ nx, ny, offset }) => offset - (nx * xMm + ny * yMm));
  if (circle) inside.push(circle.radius - Math.hypot(xMm - circle.x, yMm - circle.y));
  return Math.min(...inside);
}
