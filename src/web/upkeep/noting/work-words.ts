import type { UpkeepRecord, UpkeepWork } from "../../../studio/records/upkeep-record.ts";

/** What was done, as a button and a line of the book say it. */
export const WORK_WORDS: Readonly<Record<UpkeepWork, string>> = {
  "element resistance": "Elements measured",
  "elements changed": "Elements changed",
  "relay changed": "Relay changed",
  "probe changed": "Probe changed",
  "shelf washed": "Shelves washed",
  "shelf turned": "Shelves turned",
  "shelf cracked": "A shelf cracked",
  other: "Something else",
};

/** Work inside the kiln's electrics. */
const ELECTRICAL: ReadonlySet<UpkeepWork> = new Set([
  "element resistance",
  "elements changed",
  "relay changed",
  "probe changed",
]);
export const isElectrical = (work: UpkeepWork): boolean => ELECTRICAL.has(work);

/** Work that is counted in shelves. */
export const isOfShelves = (work: UpkeepWork): boolean => work.startsWith("shelf ");

/** One entry in a line: "Washed 3 shelves", "Elements measured: 30.4 Ω, 31.1 Ω". */
export function entryWords({ what, count = 1, ohms }: Pick<UpkeepRecord, "what" | "count" | "ohms">): string {
  if (ohms !== undefined) return `${WORK_WORDS[what]}: ${ohms.map((each) => `${each}\u00A0Ω`).join(", ")}`;
  if (!isOfShelves(what)) return what === "other" ? "Seen to" : WORK_WORDS[what];
  const shelves = count === 1 ? "1 shelf" : `${count} shelves`;
  if (what === "shelf cracked") return `${shelves} cracked`;
  return `${what === "shelf washed" ? "Washed" : "Turned"} ${shelves}`;
}
