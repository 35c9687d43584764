import { BadInput, shown } from "../../measures/bad-input.ts";
import { instantsShowing, wallText } from "./zone-clock.ts";

const ISO = /^(\d{4})-(\d{2})-(\d{2})[T ](\d{2}):(\d{2})(?::(\d{2})(?:\.\d+)?)?(Z|[+-]\d{2}:?\d{2})?$/i;

/**
 * The instant an ISO 8601 date and time means, in milliseconds since 1970 UTC. Without an offset it is the zone's own
 * clock; an hour that the clock skips is refused, one that it shows twice is asked about.
 *
 * @throws BadInput where it is no date and time, or not one instant
 */
export function instantOf(text: string, timeZone: string, path: string): number {
  const match = ISO.exec(text.trim());
  const [year, month, day, hour, minute, second] = (match?.slice(1, 7) ?? []).map((part) => Number(part ?? 0));
  const refuse = (code: string, found: string, expected: string): never => {
    throw new BadInput({ code, path, found, expected });
  };
  const shownMs = Date.UTC(year ?? Number.NaN, (month ?? 1) - 1, day, hour, minute, second);
  const date = new Date(shownMs);
  const real =
    match !== null &&
    date.getUTCMonth() + 1 === month &&
    date.getUTCDate() === day &&
    (hour ?? 24) < 24 &&
    (minute ?? 60) < 60 &&
    (second ?? 60) < 60;
  if (!real) refuse("not-a-time", shown(text), "a date and time such as 2026-10-25T22:00 or 2026-10-25T22:00+02:00");
  const offset = match?.[7];
  if (offset !== undefined) return shownMs - offsetOf(offset);
  const instants = instantsShowing(timeZone, shownMs);
  if (instants.length === 0) {
    refuse("skipped-hour", `${shown(text)}, which the clock of ${timeZone} skips that day`, "a time an hour away");
  }
  if (instants.length > 1) {
    const each = instants.map((at) => wallText(timeZone, at)).join(" or ");
    refuse("repeated-hour", `${shown(text)}, which the clock of ${timeZone} shows twice that day`, `${each}, with it`);
  }
  return instants[0] as number;
}

function offsetOf(text: string): number {
  if (/^z$/i.test(text)) return 0;
  const [hours, minutes] = [Number(text.slice(1, 3)), Number(text.slice(-2))];
  return (text.startsWith("-") ? -1 : 1) * (hours * 60 + minutes) * 60_000;
}
