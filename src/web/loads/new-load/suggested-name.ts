import type { FiringKind } from "../../../firing/cones/firing-kind.ts";
import { FIRING_WORDS } from "../../waiting/words/ware-words.ts";

const MONTHS = [
  "January",
  "February",
  "March",
  "April",
  "May",
  "June",
  "July",
  "August",
  "September",
  "October",
  "November",
  "December",
] as const;

/** A calendar day in words: "25 November". */
export function dayInWords(day: string): string {
  const [, month, date] = day.split("-").map(Number) as [number, number, number];
  return `${date} ${MONTHS[month - 1]}`;
}

/**
 * What a load may be called: "Glaze, cone 6, 25 November". Where loads have that name already, a number follows.
 *
 * @param day the day it is made on, such as 2026-11-25
 */
export function suggestedName(
  kind: FiringKind | null,
  cone: string | null,
  day: string,
  taken: readonly string[] = [],
): string {
  const parts = [kind && FIRING_WORDS[kind], cone && `cone ${cone}`, dayInWords(day)].filter(Boolean);
  const name = parts.join(", ");
  let tried = name;
  for (let number = 2; taken.includes(tried); number += 1) tried = `${name} (${number})`;
  return tried;
}
