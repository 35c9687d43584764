import type { Broken, Place } from "../../../loading/checker/check-plan.ts";
import type { Clearance } from "../../../loading/checker/clearances.ts";
import type { Scene } from "../../../loading/checker/scene.ts";
import type { LiveAnswer } from "../../../loading/editing/live-answer.ts";
import { nearestPoints } from "../../../loading/editing/nearest-points.ts";
import { marginInsideMm } from "../../../loading/solids/plan-distance.ts";
import { pointShape } from "../../../loading/solids/plan-shape.ts";
import type { Solid } from "../../../loading/solids/upright.ts";
import { formatLength, type LengthUnits } from "../../../measures/length.ts";

/** A distance to be drawn beside the piece in her hand. The drawing's millimetres, y down. */
export interface DimensionLine {
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
  /** From the piece outward, one long. */
  readonly dx: number;
  readonly dy: number;
  readonly words: string;
  /** It falls short of its rule. */
  readonly isShort: boolean;
}

type Near = Pick<Clearance, "kind" | "place" | "distanceMm" | "leastMm">;

/** Farther than this says nothing while she sets a piece down. */
const WORTH_TELLING_MM = 40;
export const MOST_LINES = 3;
/** Two lines closer in direction than this would lie on one another. */
const SAME_WAY = Math.cos((28 * Math.PI) / 180);
const TOLERANCE_MM = 1e-3;

/**
 * The distances worth drawing: everything too near, the worst first, then what is near with least to spare; at most
 * three, in different directions. Where it runs into something that alone, outside the kiln none.
 *
 * @param scene where everything else stands
 * @param piece where the piece is held
 * @param level the level it is held over
 */
export function dimensionLines(
  scene: Scene,
  piece: Solid,
  level: number,
  answer: LiveAnswer,
  units: LengthUnits,
): DimensionLine[] {
  const lines: DimensionLine[] = [];
  // Carried out of the kiln, to another level or back to where it waits.
  if (marginInsideMm(pointShape(piece.x, piece.y), 0, scene.chamber) < -piece.reachMm) return lines;
  for (const near of worthTelling(answer, level)) {
    const ends = nearestPoints(scene, piece, near);
    if (!ends) continue;
    const line = lineOf(near, ends, piece, units);
    if (lines.some((other) => other.dx * line.dx + other.dy * line.dy > SAME_WAY)) continue;
    lines.push(line);
    // While it stands in something how far from others it is says nothing yet.
    if (lines.length === MOST_LINES || near.distanceMm < 0) break;
  }
  return lines;
}

function worthTelling({ near, broken }: LiveAnswer, level: number): Near[] {
  const all = new Map<string, Near>();
  for (const each of [...broken.flatMap(asNear), ...near]) {
    const { kind, place, distanceMm, leastMm } = each;
    if (distanceMm - leastMm > WORTH_TELLING_MM) continue;
    // What stands over or under it is not beside it, unless it is too near all the same.
    const isElsewhere = kind === "ware" && place.kind === "piece" && place.level !== level;
    if (isElsewhere && distanceMm >= leastMm - TOLERANCE_MM) continue;
    all.set(`${each.kind} ${JSON.stringify(each.place)}`, each);
  }
  const slackMm = ({ distanceMm, leastMm }: Near): number => distanceMm - leastMm;
  return [...all.values()].sort((a, b) => slackMm(a) - slackMm(b));
}

/** A broken rule as the clearance it is about: of several neighbours too near, only the nearest is among the clearances. */
function asNear({ rule, foundMm, allowedMm, places }: Broken): Near[] {
  const place = places[1];
  const kind = place && kindOf(rule, place);
  return kind && foundMm !== null ? [{ kind, place, distanceMm: foundMm, leastMm: allowedMm ?? 0 }] : [];
}

function kindOf(rule: string, place: Place): Clearance["kind"] | null {
  if (rule === "probeMm") return "probe";
  if (rule === "spyholeMm") return "spyhole";
  if (rule === "shelfEdge") return "shelf edge";
  if (rule !== "gapMm") return null;
  return place.kind === "piece" ? "ware" : place.kind === "post" ? "post" : "wall";
}

function lineOf(
  near: Near,
  ends: { readonly x1: number; readonly y1: number; readonly x2: number; readonly y2: number },
  piece: Solid,
  units: LengthUnits,
): DimensionLine {
  const length = Math.hypot(ends.x2 - ends.x1, ends.y2 - ends.y1);
  // Where the ends are one place the way out from the piece's axis tells the direction; past an edge it is turned round.
  const [fromX, fromY] = length > 0.01 ? [ends.x1, ends.y1] : [piece.x, piece.y];
  const away = Math.hypot(ends.x2 - fromX, ends.y2 - fromY);
  const sign = near.distanceMm < 0 && length > 0.01 ? -1 : 1;
  // Straight above one another there is no way out: the words go to the back.
  const [dx, dy] = away < 1e-6 ? [0, 1] : [(sign * (ends.x2 - fromX)) / away, (sign * (ends.y2 - fromY)) / away];
  return {
    x1: ends.x1,
    y1: -ends.y1,
    x2: ends.x2,
    y2: -ends.y2,
    dx,
    dy: -dy,
    words: wordsOf(near, units),
    isShort: near.distanceMm < near.leastMm - TOLERANCE_MM,
  };
}

function wordsOf({ kind, distanceMm, leastMm }: Near, units: LengthUnits): string {
  const short = distanceMm < leastMm - TOLERANCE_MM ? "✕ " : "";
  const length = formatLength(Math.abs(distanceMm), units);
  if (distanceMm >= -0.05) return `${short}${length}`;
  return `${short}${length} ${kind === "shelf edge" || kind === "wall" ? "over" : "into it"}`;
}
