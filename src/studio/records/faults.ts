/**
 * What may be wrong with a fired piece, in the trade's words: glaze first, then clay, then the kiln. Names are kept in
 * records: one is never taken out or renamed, only added.
 */
export const FAULTS = [
  "crawling",
  "pinholes",
  "blisters",
  "running",
  "crazing",
  "shivering",
  "under-fired",
  "over-fired",
  "colour",
  "dunting",
  "drying crack",
  "burst",
  "bloating",
  "warping",
  "black core",
  "kiln debris",
  "stuck",
  "chipped",
  "other",
] as const;

/** One fault by its name. */
export type FaultName = (typeof FAULTS)[number];

/** How a piece came out. */
export const GRADES = ["good", "second", "lost"] as const;
export type Grade = (typeof GRADES)[number];
