import { daysBetween } from "./calendar-day.ts";

/** How near the day is that a batch is wanted. */
export const DUE_STRETCHES = ["late", "week", "month", "later", "none"] as const;
export type DueStretch = (typeof DUE_STRETCHES)[number];

export const DUE_STRETCH_WORDS: Readonly<Record<DueStretch, string>> = {
  late: "Late",
  week: "Next 7 days",
  month: "8 to 30 days",
  later: "Later",
  none: "No day",
};

/** The stretch a due day lies in, seen from today. */
export function dueStretch(dueOn: string | null, today: string): DueStretch {
  if (dueOn === null) return "none";
  const days = daysBetween(today, dueOn);
  if (days < 0) return "late";
  return days <= 7 ? "week" : days <= 30 ? "month" : "later";
}

/** A due day as she would say it: "today", "in 3 days", "2 days late". No day: "no day". */
export function dueWords(dueOn: string | null, today: string): string {
  if (dueOn === null) return "no day";
  const days = daysBetween(today, dueOn);
  if (days === 0) return "today";
  if (days === 1) return "tomorrow";
  return days > 0 ? `in ${stretchWords(days)}` : `${stretchWords(-days)} late`;
}

/** Days up to two weeks, weeks up to two months, then months, always rounded down: "2 weeks" is never less. */
function stretchWords(days: number): string {
  if (days < 14) return counted(days, "day");
  return days < 61 ? counted(Math.floor(days / 7), "week") : counted(Math.floor(days / 30.44), "month");
}

const counted = (count: number, word: string): string => `${count} ${word}${count === 1 ? "" : "s"}`;
