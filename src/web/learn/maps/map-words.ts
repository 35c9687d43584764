import type { TemperatureUnits } from "../../../measures/temperature.ts";
import type { Height, HeightHeat, KilnMaps, PlaceTally, Tally } from "../../../studio/firings/kiln-maps.ts";
import { faultName } from "../../unload/judging/fault-words.ts";
import { degreeDifference } from "../taught/parameter-words.ts";

/** A part of the shelf as she stands before the kiln: 90° is the far side, 270° is toward her. */
export const PART_WORDS: Readonly<Record<PlaceTally["part"], string>> = {
  middle: "in the middle",
  "0°": "on the right",
  "90°": "at the far side",
  "180°": "on the left",
  "270°": "toward you",
};

export const HEIGHT_WORDS: Readonly<Record<Height, string>> = {
  bottom: "Bottom third",
  middle: "Middle third",
  top: "Top third",
};

/** Within so many degrees of the wanted cone a height runs as it should; about a sixth of a cone. */
const EVEN_C = 3;

/** How hot a height runs: "5 °C hot by its cones", with what was foretold beside it. */
export function heatWords({ overC, foretoldOverC, shelves }: HeightHeat, units: TemperatureUnits): string {
  const told = foretoldOverC === null ? null : hotOrCool(foretoldOverC, units);
  if (overC === null) return told === null ? "No cone has told yet how hot it runs" : `No cone yet; foretold ${told}`;
  const seen = `${capital(hotOrCool(overC, units))} by ${shelves === 1 ? "the cones of one shelf" : `the cones of ${shelves} shelves`}`;
  return told === null ? seen : `${seen}; foretold ${told}`;
}

/** Hot, cool or as wanted: for a sign beside the words. */
export const heatSign = (overC: number | null): "hot" | "cool" | "even" | null =>
  overC === null ? null : overC > EVEN_C ? "hot" : overC < -EVEN_C ? "cool" : "even";

function hotOrCool(overC: number, units: TemperatureUnits): string {
  const sign = heatSign(overC);
  return sign === "even" ? "as wanted" : `${degreeDifference(overC, units)} ${sign === "hot" ? "hot" : "cool"}`;
}

const capital = (words: string): string => `${words[0]?.toUpperCase() ?? ""}${words.slice(1)}`;

/** "9 pieces: 7 good, 1 second, 1 lost". */
export function tallyWords({ pieces, good, second, lost }: Tally): string {
  if (pieces === 0) return "nothing fired here yet";
  const found = [
    good > 0 ? `${good} good` : "",
    second > 0 ? `${second} ${second === 1 ? "second" : "seconds"}` : "",
    lost > 0 ? `${lost} lost` : "",
  ];
  return `${pieces === 1 ? "1 piece" : `${pieces} pieces`}: ${found.filter(Boolean).join(", ")}`;
}

/** The commonest fault and how often: "pinholes, 3 times"; a dash where there was none. */
export function commonestFault({ faults }: Tally): string {
  const [first] = faults;
  if (first === undefined) return "–";
  const [fault, times] = first;
  return times === 1 ? faultName(fault) : `${faultName(fault)}, ${times} times`;
}

/** Fewer pieces than this at a place tell nothing yet. */
const FEW = 4;
/** A place is called worse where its share of seconds and losses is so many times that of the whole kiln. */
const WORSE = 2;

/** The one place that loses most, where enough was fired in it to say so; else null. */
export function worstPlace({ places, all }: KilnMaps): PlaceTally | null {
  const telling = places.filter(({ pieces, badShare }) => pieces >= FEW && badShare > WORSE * all.badShare);
  return telling.sort((a, b) => b.badShare - a.badShare)[0] ?? null;
}
