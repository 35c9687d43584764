import { BadInput } from "../../measures/bad-input.ts";
import { energyUse, lastUse, type PowerCurve } from "./energy-use.ts";
import { costOf, type FiringCost } from "./firing-cost.ts";
import { offsetMinutes, wallTime } from "./local-clock.ts";
import { pricePieces } from "./price-pieces.ts";
import { clockMinute, type Tariff } from "./tariff.ts";

const MINUTE_MS = 60_000;
const HOUR_MS = 60 * MINUTE_MS;
const LONGEST_CHOICE_DAYS = 60;
/** Two costs closer than this share are the same to her. */
const SAME_COST = 0.005;

/** Hours of the day on the clock on the wall; `to` before `from` runs past midnight. */
export interface DayHours {
  readonly from: string;
  readonly to: string;
}

/** When she could start, and what must fall where. */
export interface StartWish {
  /** Starts are tried from here to there, milliseconds since 1970 in universal time. */
  readonly earliestMs: number;
  readonly latestMs: number;
  /** How far apart; 15 minutes where left out. */
  readonly everyMin?: number;
  /** Hours from the start until the kiln may be opened (a prediction's hours and coolHours together). */
  readonly openAfterHours?: number;
  /** The kiln should be cool enough to open between these moments. */
  readonly openBetweenMs?: readonly [number, number];
  /** She presses start herself within these hours. */
  readonly startHours?: DayHours;
  /** Somebody is there within these hours when it shuts off. */
  readonly shutOffHours?: DayHours;
}

/** A start and what comes of it. */
export interface StartChoice {
  readonly startMs: number;
  readonly shutOffMs: number;
  /** When it may be opened; null where the wish does not say how long cooling takes. */
  readonly openMs: number | null;
  readonly firing: FiringCost;
}

export interface BestStart {
  /** The cheapest; of those that cost the same to half a per cent, the earliest. Null where no start fits the wish. */
  readonly best: StartChoice | null;
  /** Starting as soon as the wish begins, whether or not that fits. */
  readonly now: StartChoice;
  readonly dearest: StartChoice | null;
  /** How many starts were tried, and how many fitted. */
  readonly tried: number;
  readonly fitted: number;
}

/**
 * Finds the cheapest start by trying each.
 *
 * @throws BadInput for a span that ends before it begins, is longer than 60 days, or asks for an opening without saying how long cooling takes
 */
export function bestStart(power: PowerCurve, tariff: Tariff, wish: StartWish): BestStart {
  checkWish(wish);
  const { earliestMs, latestMs } = wish;
  const every = (wish.everyMin ?? 15) * MINUTE_MS;
  const use = energyUse(power);
  const lengthMs = lastUse(use) * MINUTE_MS;
  const pieces = pricePieces(tariff, earliestMs, latestMs + lengthMs);
  const choiceAt = (startMs: number): StartChoice => ({
    startMs,
    shutOffMs: startMs + lengthMs,
    openMs: wish.openAfterHours === undefined ? null : startMs + wish.openAfterHours * HOUR_MS,
    firing: costOf(
      use,
      startMs,
      tariff,
      pieces.filter((piece) => piece.toMs > startMs && piece.fromMs < startMs + lengthMs),
    ),
  });
  const fits = (startMs: number): boolean => {
    const openMs = startMs + (wish.openAfterHours ?? 0) * HOUR_MS;
    const [openFrom, openTo] = wish.openBetweenMs ?? [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
    return (
      openMs >= openFrom &&
      openMs <= openTo &&
      within(tariff.timeZone, startMs, wish.startHours) &&
      within(tariff.timeZone, startMs + lengthMs, wish.shutOffHours)
    );
  };
  const choices: StartChoice[] = [];
  let tried = 0;
  for (let startMs = earliestMs; startMs <= latestMs; startMs += every) {
    tried++;
    if (fits(startMs)) choices.push(choiceAt(startMs));
  }
  const costs = choices.map((each) => each.firing.cost);
  const cheapest = Math.min(...costs);
  const highest = Math.max(...costs);
  return {
    best: choices.find((each) => each.firing.cost <= cheapest + SAME_COST * Math.abs(cheapest)) ?? null,
    now: choiceAt(earliestMs),
    dearest: choices.find((each) => each.firing.cost === highest) ?? null,
    tried,
    fitted: choices.length,
  };
}

function checkWish({ earliestMs, latestMs, everyMin = 15, openBetweenMs, openAfterHours }: StartWish): void {
  const refuse = (path: string, found: string, expected: string): never => {
    throw new BadInput({ code: "out-of-range", path, found, expected });
  };
  if (!(latestMs >= earliestMs)) refuse("latestMs", String(latestMs), "a moment at or after the earliest start");
  if (latestMs - earliestMs > LONGEST_CHOICE_DAYS * 24 * HOUR_MS) {
    refuse("latestMs", `more than ${LONGEST_CHOICE_DAYS} days`, `at most ${LONGEST_CHOICE_DAYS} days to choose from`);
  }
  if (!(everyMin >= 1)) refuse("everyMin", String(everyMin), "at least 1 minute");
  if (openBetweenMs && openAfterHours === undefined) {
    refuse("openAfterHours", "nothing", "the hours from start to opening, since an opening is wished for");
  }
}

function within(timeZone: string, ms: number, hours: DayHours | undefined): boolean {
  if (!hours) return true;
  const minute = wallTime(ms, offsetMinutes(timeZone, ms)).minuteOfDay;
  const [from, to] = [clockMinute(hours.from), clockMinute(hours.to)];
  return from <= to ? minute >= from && minute <= to : minute >= from || minute <= to;
}
