/** Every cone of the table, coolest first. The half cones 05.5 and 5.5 are cones of their own, with rows of their own. */
export const CONES = [
  "022",
  "021",
  "020",
  "019",
  "018",
  "017",
  "016",
  "015",
  "014",
  "013",
  "012",
  "011",
  "010",
  "09",
  "08",
  "07",
  "06",
  "05.5",
  "05",
  "04",
  "03",
  "02",
  "01",
  "1",
  "2",
  "3",
  "4",
  "5",
  "5.5",
  "6",
  "7",
  "8",
  "9",
  "10",
  "11",
  "12",
  "13",
  "14",
] as const;

/** A cone's number as it is stamped on the cone: "022" is the coolest, "14" the hottest. */
export type ConeName = (typeof CONES)[number];

const PLACE = new Map<string, number>(CONES.map((cone, place) => [cone, place]));

/** A cone's place in `CONES`, half cones counted. */
export const conePlace = (cone: ConeName): number => PLACE.get(cone) as number;

/** True for text that is exactly a cone's number. Looser spellings: `parseCone`. */
export const isCone = (text: string): text is ConeName => PLACE.has(text);

/** True for 05.5 and 5.5. */
export const isHalfCone = (cone: ConeName): boolean => cone.endsWith(".5");

/**
 * A cone as a number on the ladder: 022 = 0, 021 = 1, … 01 = 21, 1 = 22, … 6 = 27, … 14 = 35; half cones at the half.
 * Cones with a leading zero count down towards 01, so that the ladder rises with temperature.
 */
export function ladderOf(cone: ConeName): number {
  const number = Number(cone);
  return cone.startsWith("0") ? 22 - number : 21 + number;
}

/** The cone standing at a number of the ladder, or null where none does. */
export const coneAtLadder = (ladder: number): ConeName | null =>
  CONES.find((cone) => ladderOf(cone) === ladder) ?? null;
