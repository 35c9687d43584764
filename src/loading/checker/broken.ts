/**
 * Where something stands in a plan, so that a drawing can point at it. Indices count from 0, as in the file; sentences
 * count levels, pieces and posts from 1, as a potter does.
 */
export type Place =
  | { readonly kind: "shelf"; readonly level: number }
  | { readonly kind: "post"; readonly level: number; readonly post: number }
  | { readonly kind: "piece"; readonly level: number; readonly placement: number }
  | { readonly kind: "probe"; readonly probe: number }
  | { readonly kind: "spyhole"; readonly spyhole: number }
  | { readonly kind: "chamber" };

/** One rule broken in one place. */
export interface Broken {
  /** The rule's name. */
  readonly rule: string;
  /** Index of the level it concerns, from 0; null where it concerns the whole load. */
  readonly level: number | null;
  /** What is involved: "espresso cup 3 on level 2", "post 1 under level 3". */
  readonly things: readonly string[];
  /** The distance found, where the rule is about one; below zero where solids overlap. */
  readonly foundMm: number | null;
  /** The least or the most the rule allows. */
  readonly allowedMm: number | null;
  /** A sentence for the potter. */
  readonly message: string;
  readonly places: readonly Place[];
}

/**
 * How far a distance may fall short of its rule and still keep it, so that a plan exactly at a limit passes in spite of
 * rounding in the last digits. A thousandth of a millimetre: no potter sets a pot to that.
 */
export const CLEARANCE_TOLERANCE_MM = 1e-3;

/**
 * How far heights that must add up may differ: base, posts and shelf thickness against the level's height. Plans are
 * written to the millimetre or its tenth; half a millimetre of rounding is not a wobbling shelf.
 */
export const HEIGHT_TOLERANCE_MM = 0.5;

/** Whether a distance falls short of the least allowed. */
export const tooLittle = (foundMm: number, leastMm: number): boolean => foundMm < leastMm - CLEARANCE_TOLERANCE_MM;

/** A length for a sentence: to a tenth, or to as many places as show that it is not the limit itself. */
export function mmText(mm: number, limitMm: number | null = null): string {
  const limit = limitMm === null ? null : String(Math.round(limitMm * 10) / 10);
  for (const places of [10, 100, 1000]) {
    const text = String(Math.round(mm * places) / places);
    if (text !== limit || mm === limitMm) return `${text} mm`;
  }
  return `${mm} mm`;
}

/** "stands 4.2 mm from the bowl", or what to say where there is no room between them at all. */
export function standsFrom(foundMm: number, other: string, leastMm: number): string {
  if (foundMm < -0.05) return `runs ${mmText(-foundMm)} into ${other}`;
  if (foundMm <= 0) return `touches ${other}`;
  return `stands ${mmText(foundMm, leastMm)} from ${other}`;
}

/** The text as the beginning of a sentence. */
export const sentenceCase = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
