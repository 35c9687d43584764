import { BadInput } from "../../measures/bad-input.ts";
import { type ConeName, conePlace } from "./cone.ts";
import { parseCone } from "./parse-cone.ts";

/** The cones, ends included, between which a glaze melts as it should or a body matures. */
export interface ConeRange {
  readonly coolest: ConeName;
  readonly hottest: ConeName;
}

/** A range of one cone, or between two, in either order. */
export const coneRange = (one: ConeName, other: ConeName = one): ConeRange =>
  conePlace(one) <= conePlace(other) ? { coolest: one, hottest: other } : { coolest: other, hottest: one };

/**
 * Reads a range as it stands on a bag or a jar: `5-6`, `cone 06–04`, `Δ8 to 10`, `6`.
 *
 * @throws BadInput where one end is not a cone
 */
export function parseConeRange(text: string, path = "cones"): ConeRange {
  const ends = text.trim().split(/\s*(?:-|–|—|…|\.\.|\bto\b)\s*/i);
  if (ends.length > 2) {
    throw new BadInput({
      code: "not-a-range",
      path,
      found: `"${text.trim()}"`,
      expected: "one cone or two, such as 5-6",
    });
  }
  const [one, other] = ends.map((end) => parseCone(end, path));
  return coneRange(one as ConeName, other);
}

export const isInRange = (cone: ConeName, range: ConeRange): boolean =>
  conePlace(range.coolest) <= conePlace(cone) && conePlace(cone) <= conePlace(range.hottest);

/** The cones that lie in both ranges, or null where there is none. */
export function sharedRange(a: ConeRange, b: ConeRange): ConeRange | null {
  const coolest = conePlace(a.coolest) > conePlace(b.coolest) ? a.coolest : b.coolest;
  const hottest = conePlace(a.hottest) < conePlace(b.hottest) ? a.hottest : b.hottest;
  return conePlace(coolest) <= conePlace(hottest) ? { coolest, hottest } : null;
}

/** "cone 6", or "cones 06 to 04". */
export const formatConeRange = ({ coolest, hottest }: ConeRange): string =>
  coolest === hottest ? `cone ${coolest}` : `cones ${coolest} to ${hottest}`;
