import type { Clearance } from "../../../loading/checker/clearances.ts";
import type { LiveAnswer } from "../../../loading/editing/live-answer.ts";
import { formatLength, type LengthUnits } from "../../../measures/length.ts";

/** What there is beside a piece, on its own shelf or round it: what a line can be drawn to from above. */
const BESIDE: ReadonlySet<Clearance["kind"]> = new Set(["ware", "post", "wall", "shelf edge", "probe", "spyhole"]);

/** So little short of a rule is rounding: as the checker has it. */
const TOLERANCE_MM = 1e-3;

const slackMm = ({ distanceMm, leastMm }: Clearance): number => distanceMm - leastMm;

/**
 * What matters most of what is near a piece: where a rule is broken, the thing it is broken by most; else what is
 * beside it with least to spare. Null where nothing is near.
 */
export function whatMatters(near: readonly Clearance[]): Clearance | null {
  const tightest = (all: readonly Clearance[]): Clearance | null =>
    all.reduce<Clearance | null>((best, each) => (best && slackMm(best) <= slackMm(each) ? best : each), null);
  const worst = tightest(near);
  return worst && slackMm(worst) < -TOLERANCE_MM ? worst : tightest(near.filter(({ kind }) => BESIDE.has(kind)));
}

/** Whether a clearance falls short of its rule. */
export const fallsShort = (clearance: Clearance): boolean => slackMm(clearance) < -TOLERANCE_MM;

/** "the bowl": her names carry no article. */
export const theName = ({ kind, to }: Clearance): string => (kind === "ware" || kind === "post" ? `the ${to}` : to);

/** One clearance in a few words: "9 mm to the bowl", "2 mm to the bowl, at least 6 mm", "12 mm over the shelf's edge". */
export function clearanceWords(clearance: Clearance, units: LengthUnits): string {
  const { kind, distanceMm, leastMm } = clearance;
  const length = (mm: number): string => formatLength(mm, units);
  const name = theName(clearance);
  if (distanceMm < -0.05) {
    const by = length(-distanceMm);
    if (kind === "shelf edge") return `${by} over the shelf’s edge`;
    if (kind === "lid") return `${by} too tall for the lid`;
    return `${by} into ${name}`;
  }
  const room = distanceMm <= 0.05 ? `touches ${name}` : `${length(distanceMm)} to ${name}`;
  return fallsShort(clearance) ? `${room}, at least ${length(leastMm)}` : room;
}

/** How a piece stands where it is held, in one line. */
export function answerWords({ broken, near }: LiveAnswer, units: LengthUnits): string {
  const matters = whatMatters(near);
  if (matters === null) return broken[0]?.message ?? "";
  const words = clearanceWords(matters, units);
  const others = fallsShort(matters) ? broken.length - 1 : 0;
  return others <= 0 ? words : `${words}; ${others} more too near`;
}
