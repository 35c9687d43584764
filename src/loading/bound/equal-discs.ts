/**
 * The least radius of a round shelf, in radii of n equal discs on it, n from 0: proven least for every one of them
 * (5–7: Graham 1968; 8–10: Pirl 1969; 11: Melissen 1994; 12, 13: Fodor 2000, 2003; table and sources in
 * golden/packing-records).
 */
const LEAST_RATIO = [
  0, 1, 2, 2.154700538379252, 2.414213562373096, 2.701301616704081, 3, 3, 3.304764870962487, 3.613125929752754,
  3.813025631398151, 3.923804400163087, 4.029601930159612, 4.236067977499791,
];
/** What 14 discs are proven to need (Ekanayake and LaFountain 2024), and 19 (Fodor 1999). */
const FOURTEEN = 4.3284285548608;
const NINETEEN = 4.8637033051563;
const SAFE = 1e-9;

/** How many equal discs surely fit on a round shelf `ratio` times as wide as each; never too many, at most 13. */
export function surelyFit(ratio: number): number {
  if (ratio < 1) return 0;
  return Math.max(
    1,
    LEAST_RATIO.findLastIndex((least) => least * (1 + SAFE) <= ratio),
  );
}

/** No more equal discs than this fit on a round shelf `ratio` times as wide as each; infinite where nothing is proven. */
export function atMostFit(ratio: number): number {
  if (ratio >= NINETEEN * (1 - SAFE)) return Number.POSITIVE_INFINITY;
  if (ratio >= FOURTEEN * (1 - SAFE)) return 18;
  return LEAST_RATIO.findLastIndex((least) => least * (1 - SAFE) <= ratio);
}

/**
 * No more discs than this, none overlapping, have their middles in a convex region.
 * Groemer's inequality (Math. Z. 73, 1960; Oler 1961): points of a compact convex region at least d from each other number
 * at most 2A/(√3·d²) + P/(2d) + 1.
 */
export function atMostIn(areaMm2: number, perimeterMm: number, radiusMm: number): number {
  const apart = 2 * radiusMm;
  return Math.floor((2 * areaMm2) / (Math.sqrt(3) * apart * apart) + perimeterMm / (2 * apart) + 1 + SAFE);
}
