import { type ConvexRegion, edgeDistanceMm, placedRegion, shelfRegion } from "../../kiln/convex-region.ts";
import type { Post, Shelf } from "../../kiln/furniture.ts";
import { radians, wrapDegrees } from "../../measures/angle.ts";
import { checkPlan } from "../checker/check-plan.ts";
import type { Level, LoadPlan, PlacedPost } from "../load-plan.ts";
import type { LoadRequest } from "../load-request.ts";
import { postPrism } from "../solids/furniture-solids.ts";
import { marginInsideMm } from "../solids/plan-distance.ts";
import { widestMm } from "../solids/upright.ts";

// Which way three posts lie from a shelf's middle, before they are turned to pass the probe: round a full shelf at even
// distances; under a half one, whose body lies to one side, two toward the ends of its straight side and one behind.
// Common practice, no source.
const AROUND_DEG = [0, 120, 240];
const ON_A_HALF_DEG = [20, 90, 160];
/** Directions tried, as a potter turns the three about until they pass what is in the way. */
const TURN_STEP_DEG = 10;
const INSIDE_MM = 0.02;

/**
 * Three posts for a shelf that stands on no others yet, as far out as they go, where they take the least room, and turned
 * so that as little as possible is in their way. A beginning, to be moved.
 *
 * @param level the shelf where it lies, its posts still to come
 */
export function firstPosts(
  request: LoadRequest,
  level: Pick<Level, "shelf" | "topMm" | "xMm" | "yMm" | "turnDeg">,
  heightsMm: readonly number[],
): PlacedPost[] {
  const kind = request.furniture.shelves.find(({ name }) => name === level.shelf);
  const post = widest(request.furniture.posts, heightsMm);
  if (!kind || !post) return [];
  const region = placedRegion(shelfRegion(kind), 0, 0, level.turnDeg);
  let best: { posts: PlacedPost[]; broken: number } | null = null;
  for (const turn of turnsOf(kind)) {
    const posts = (kind.shape === "half-disc" ? ON_A_HALF_DEG : AROUND_DEG).map((deg) => {
      const turnDeg = wrapDegrees(deg + turn + level.turnDeg);
      const away = farthestOut(region, post, turnDeg);
      return {
        xMm: level.xMm + tenth(away * Math.cos(radians(turnDeg))),
        yMm: level.yMm + tenth(away * Math.sin(radians(turnDeg))),
        turnDeg,
        heightsMm: [...heightsMm],
      };
    });
    const alone: LoadPlan = {
      format: "load-plan/1",
      levels: [{ ...level, posts, placements: [] }],
      left: [],
      figures: {},
    };
    const broken = checkPlan(request, alone).length;
    if (!best || broken < best.broken) best = { posts, broken };
    if (broken === 0) break;
  }
  return best?.posts ?? [];
}

const turnsOf = ({ shape }: Shelf): number[] =>
  shape === "half-disc" ? [0] : Array.from({ length: 120 / TURN_STEP_DEG }, (_, i) => i * TURN_STEP_DEG);

/** The widest post of those heights: whichever she picks up then fits. */
function widest(posts: readonly Post[], heightsMm: readonly number[]): Pick<Post, "shape" | "widthMm"> | null {
  const those = posts.filter(({ heightMm }) => heightsMm.includes(heightMm));
  const all = those.length > 0 ? those : posts;
  if (all.length === 0) return null;
  return { shape: "square", widthMm: Math.max(...all.map(({ widthMm }) => widthMm)) };
}

/** How far out along a direction a post with a flat outward still stands wholly under the shelf. */
function farthestOut(region: ConvexRegion, post: Pick<Post, "shape" | "widthMm">, turnDeg: number): number {
  const fits = (away: number): boolean => {
    const prism = postPrism(post, away * Math.cos(radians(turnDeg)), away * Math.sin(radians(turnDeg)), turnDeg, 0, 1);
    return marginInsideMm(prism.core, widestMm(prism), region) >= INSIDE_MM;
  };
  // From the edge inward: the first place where it fits. Near a half shelf's straight side it fits only farther out.
  const edge = edgeDistanceMm(region, turnDeg);
  for (let away = edge; away > 0; away -= 1) if (fits(away)) return Math.floor(away);
  return 0;
}

const tenth = (mm: number): number => Math.round(mm * 10) / 10;
