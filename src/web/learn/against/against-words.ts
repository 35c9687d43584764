import type { TemperatureUnits } from "../../../measures/temperature.ts";
import { type FiringAgainst, howFarOff } from "../../../studio/firings/predicted-against-actual.ts";

/** One firing's foretold and measured figure, as a small chart draws it. */
export interface Pair {
  readonly firingId: string;
  readonly name: string;
  readonly startedAt: string;
  readonly foretold: number | null;
  readonly actual: number | null;
}

/** The last of the firings of which something is known, the oldest first. */
export function pairsOf(rows: readonly FiringAgainst[], of: "hours" | "kWh", most: number): Pair[] {
  return rows
    .map(({ firingId, name, startedAt, [of]: { foretold, actual } }) => ({
      ...{ firingId, name, startedAt, foretold, actual },
    }))
    .filter(({ foretold, actual }) => foretold !== null || actual !== null)
    .slice(-most);
}

/** A scale from a round number below the least to one above the most; never narrower than `least` asks. */
export function scaleOf(values: readonly number[], narrowest: number): readonly [from: number, to: number] {
  if (values.length === 0) return [0, narrowest];
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const room = Math.max(narrowest, (high - low) * 1.2);
  const middle = (low + high) / 2;
  const step = stepOf(room);
  const from = Math.floor((middle - room / 2) / step) * step;
  return [low >= 0 ? Math.max(0, from) : from, Math.ceil((middle + room / 2) / step) * step];
}

/** A step of 1, 2 or 5 times a power of ten, about a quarter of the room. */
function stepOf(room: number): number {
  const tenth = 10 ** Math.floor(Math.log10(room / 4));
  const of = [1, 2, 5, 10].find((each) => each * tenth >= room / 4) ?? 10;
  return of * tenth;
}

/** How well foretelling does: before the kiln was learned from, and since. Null where nothing can be compared. */
export function howFarOffWords(
  rows: readonly FiringAgainst[],
  of: "hoursPercent" | "kWhPercent" | "shelfC",
  units: TemperatureUnits,
): string | null {
  const told = (these: readonly FiringAgainst[]): string | null => {
    const known = these.filter((row) => howFarOff([row])[of] !== null);
    const off = howFarOff(known)[of];
    if (off === null) return null;
    const firings = known.length === 1 ? "one firing" : `${known.length} firings`;
    if (of === "shelfC") return `${Math.round(units === "F" ? (off * 9) / 5 : off)} °${units} in ${firings}`;
    return `${off < 0.95 ? off.toFixed(1) : Math.round(off)} % in ${firings}`;
  };
  const described = told(rows.filter(({ calibrated }) => !calibrated));
  const learned = told(rows.filter(({ calibrated }) => calibrated));
  if (described === null && learned === null) return null;
  if (learned === null) return `Off by ${described}, foretold from the kiln as described.`;
  if (described === null) return `Off by ${learned}, foretold from what it has taught.`;
  return `Off by ${described} as described; by ${learned} since it was learned from.`;
}
