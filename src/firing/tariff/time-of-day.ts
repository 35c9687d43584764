import { BadInput, shown } from "../../measures/bad-input.ts";

export const MINUTES_A_DAY = 1440;
const TIME_OF_DAY = /^(\d{1,2}):(\d{2})$/;

/**
 * Minutes since local midnight of a time such as 22:30; 24:00 is the end of the day.
 *
 * @throws BadInput where it is no time of day
 */
export function minutesOfDay(text: string, path: string): number {
  const match = TIME_OF_DAY.exec(text.trim());
  const minutes = match ? Number(match[1]) * 60 + Number(match[2]) : Number.NaN;
  if (match && Number(match[2]) < 60 && minutes <= MINUTES_A_DAY) return minutes;
  throw new BadInput({
    code: "not-a-time",
    path,
    found: shown(text),
    expected: "a time of day from 00:00 to 24:00, such as 22:30",
  });
}
