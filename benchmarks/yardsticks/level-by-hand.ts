import { chamberRegion, edgeDistanceMm } from "../../src/kiln/convex-region.ts";
import { shelfMassKg } from "../../src/kiln/shelf-mass.ts";
import { spyholeMouth } from "../../src/kiln/wall-fittings.ts";
import type { Placement } from "../../src/loading/load-plan.ts";
import type { LoadRequest } from "../../src/loading/load-request.ts";
import { postPrism, shelfMiddle } from "../../src/loading/solids/furniture-solids.ts";
import { mouthDistanceMm } from "../../src/loading/solids/mouth-distance.ts";
import { marginInsideMm } from "../../src/loading/solids/plan-distance.ts";
import { type Solid, solidDistanceMm, solidOf, widestMm } from "../../src/loading/solids/upright.ts";
import { wareSolid } from "../../src/loading/solids/ware-solid.ts";
import { pieceMassKg } from "../../src/ware/mass.ts";
import { pieceSolid } from "../../src/ware/solid.ts";
import type { Ware } from "../../src/ware/ware.ts";
import { type LaidShelf, type PostPlaces, probeSolids } from "./furniture-by-hand.ts";

const SPARE_MM = 0.02;

/** How finely a hand tries places: ring by ring from the edge inward, round each ring. */
export interface Touch {
  readonly ringMm: number;
  readonly stepDeg: number;
  /** Ways to turn a handle: degrees from straight outward. */
  readonly handleDeg: readonly number[];
}

interface Standing {
  readonly ware: Ware;
  readonly placement: Placement;
  readonly solid: Solid;
}

/** One shelf being loaded by hand: a piece goes to the first place, from the edge inward, where it keeps every rule. */
export class LevelByHand {
  readonly laid: LaidShelf;
  readonly topMm: number;
  /** Tallest piece, cookie included, that may stand here. */
  readonly clearMm: number;
  readonly standing: Standing[] = [];
  private readonly request: LoadRequest;
  private readonly places: PostPlaces;
  private readonly postsAbove: readonly Solid[];
  private readonly probes: readonly Solid[];

  /** @param postAbove the widest post standing on this shelf; null on the top one */
  constructor(
    request: LoadRequest,
    laid: LaidShelf,
    topMm: number,
    clearMm: number,
    places: PostPlaces,
    postAbove: { widthMm: number; shape: "square" | "round" } | null,
  ) {
    this.request = request;
    this.laid = laid;
    this.topMm = topMm;
    this.clearMm = clearMm;
    this.places = places;
    this.probes = probeSolids(request);
    this.postsAbove = postAbove
      ? places.xy.map(([x, y], i) =>
          solidOf(x, y, [postPrism(postAbove, x, y, places.turnDeg[i]!, topMm, topMm + clearMm)]),
        )
      : [];
  }

  /** Sets one piece down at the first place that will do; false where there is none. */
  setDown(ware: Ware, touch: Touch): boolean {
    if ((ware.cookie?.thicknessMm ?? 0) + ware.heightMm > this.clearMm + 1e-9) return false;
    const radius = Math.max(ware.diameterMm, ware.cookie?.diameterMm ?? 0) / 2;
    const arm = ware.handle ?? ware.spout;
    const turns = arm ? touch.handleDeg : [0];
    const angles = Array.from({ length: Math.round(360 / touch.stepDeg) }, (_, i) => i * touch.stepDeg);
    const out = angles.map((angle) => edgeDistanceMm(this.laid.region, angle) - radius - SPARE_MM);
    const farthest = Math.max(...out);
    for (let ring = 0; ring * touch.ringMm <= farthest; ring++) {
      for (const [i, angle] of angles.entries()) {
        const away = out[i]! - ring * touch.ringMm;
        if (away < 0) continue;
        const x = Math.round(away * Math.cos((angle * Math.PI) / 180) * 1000) / 1000;
        const y = Math.round(away * Math.sin((angle * Math.PI) / 180) * 1000) / 1000;
        if (this.plainlyTaken(x, y, ware)) continue;
        for (const turn of turns) {
          const turnDeg = arm ? angle + turn - arm.angleDeg : 0;
          const solid = wareSolid(ware, x, y, turnDeg, this.topMm);
          if (!this.mayStand(solid)) continue;
          this.standing.push({ ware, solid, placement: { ware: ware.name, xMm: x, yMm: y, turnDeg } });
          return true;
        }
      }
    }
    return false;
  }

  /** A quick no: so near another piece that at some height the two would come too close. */
  private plainlyTaken(x: number, y: number, ware: Ware): boolean {
    const { gapMm } = this.request.rules;
    const own = sections(ware);
    for (const { placement, ware: other } of this.standing) {
      const dx = x - placement.xMm;
      const dy = y - placement.yMm;
      const theirs = sections(other);
      for (let i = 0; i < own.length; i++) {
        if (own[i]! < 0 || theirs[i]! < 0) continue;
        const least = own[i]! + theirs[i]! + gapMm;
        if (dx * dx + dy * dy < least * least) return true;
      }
    }
    return this.postsAbove.some((post) => Math.hypot(x - post.x, y - post.y) < own[0]! + gapMm);
  }

  private mayStand(solid: Solid): boolean {
    const { rules, kiln } = this.request;
    const gap = rules.gapMm + SPARE_MM;
    for (const other of this.standing) if (solidDistanceMm(solid, other.solid, gap) < gap) return false;
    for (const post of this.postsAbove) if (solidDistanceMm(solid, post, gap) < gap) return false;
    const walls = chamberRegion(kiln.chamber);
    for (const part of solid.parts) {
      if (marginInsideMm(part.core, widestMm(part), this.laid.region) < 0) return false;
      if (marginInsideMm(part.core, widestMm(part), walls) < gap) return false;
    }
    const probe = rules.probeMm + SPARE_MM;
    if (this.probes.some((each) => solidDistanceMm(solid, each, probe) < probe)) return false;
    const hole = rules.spyholeMm + SPARE_MM;
    return kiln.spyholes.every(
      (each) => !each.open || mouthDistanceMm(solid, spyholeMouth(kiln.chamber, each), hole) >= hole,
    );
  }

  /** Takes the last pieces off again until the shelf's weight lies inside its posts; gives them back. */
  takeOffWhatTips(): Ware[] {
    const taken: Ware[] = [];
    while (this.standing.length > 0 && !this.isBalanced()) taken.push(this.standing.pop()!.ware);
    return taken;
  }

  private isBalanced(): boolean {
    const { areaMm2 } = shelfMiddle(this.laid.shelf);
    let mass = shelfMassKg(areaMm2, this.laid.shelf.thicknessMm);
    let x = 0;
    let y = 0;
    for (const { ware, placement } of this.standing) {
      const kg = pieceMassKg(ware);
      x += kg * placement.xMm;
      y += kg * placement.yMm;
      mass += kg;
    }
    x /= mass;
    y /= mass;
    return this.places.xy.every(([ax, ay], i) => {
      const [bx, by] = this.places.xy[(i + 1) % 3]!;
      return (bx - ax) * (y - ay) - (by - ay) * (x - ax) > 1;
    });
  }
}

const SECTION_HEIGHTS_MM = [0.5, 3, 6, 12, 20, 35, 50, 75, 100, 150];
const known = new WeakMap<Ware, Float64Array>();

/** A piece's radius at some heights above the shelf; below zero where it does not reach so high. */
function sections(ware: Ware): Float64Array {
  const found = known.get(ware) ?? Float64Array.from(SECTION_HEIGHTS_MM, (height) => radiusAtMm(ware, height));
  known.set(ware, found);
  return found;
}

function radiusAtMm(ware: Ware, height: number): number {
  const { rings, cookie } = pieceSolid(ware);
  let radius = cookie && height <= cookie.topMm ? cookie.radiusMm : -1;
  for (let i = 0; i + 1 < rings.length; i++) {
    const [low, lowOut] = rings[i]!;
    const [high, highOut] = rings[i + 1]!;
    if (height < low || height > high || high === low) continue;
    radius = Math.max(radius, lowOut + ((highOut - lowOut) * (height - low)) / (high - low));
  }
  return radius;
}
