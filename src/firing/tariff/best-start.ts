import { BadInput } from "../../measures/bad-input.ts";
import { costFrom, type FiringCost, lengthMs } from "./firing-cost.ts";
import { type FiringPower, firingEnergy } from "./firing-energy.ts";
import { instantOf } from "./instant.ts";
import { priceSpans } from "./price-spans.ts";
import type { Tariff } from "./tariff.ts";
import { minutesOfDay } from "./time-of-day.ts";
import { instantsShowing, offsetMs, wallText, wallTime } from "./zone-clock.ts";

const MINUTE_MS = 60_000;
const DAY_MS = 86_400_000;
const LONGEST_SPAN_DAYS = 31;

/** What she wants of the start. */
export type StartWish =
  | { readonly kind: "cheapest" }
  /** Cool enough to open by the first such time of day that the earliest start can still meet. */
  | { readonly kind: "open-by"; readonly time: string };

export interface BestStartInput {
  readonly firing: FiringPower;
  readonly tariff: Tariff;
  /** ISO 8601; without an offset by the tariff's own clock. */
  readonly earliest: string;
  readonly latest: string;
  readonly wanted: StartWish;
  /** Minutes from the start until it may be opened: wanted wherever opening matters. */
  readonly openAfterMin?: number | undefined;
  /** Hours of the day in which she can open it; no start is given that opens outside them. */
  readonly openHours?: { readonly from: string; readonly to: string } | undefined;
  /** How far apart the starts tried are; a quarter of an hour where left out. */
  readonly stepMin?: number | undefined;
}

/** One possible start. */
export interface StartChoice {
  /** ISO 8601, UTC. */
  readonly startIso: string;
  /** By the tariff's own clock. */
  readonly startLocal: string;
  readonly opensIso: string | null;
  readonly opensLocal: string | null;
  readonly cost: FiringCost;
}

export type BestStart =
  | {
      readonly kind: "found";
      readonly best: StartChoice;
      /** The earliest and the dearest of the starts that keep her wishes: what the best one saves against. */
      readonly earliest: StartChoice;
      readonly dearest: StartChoice;
      readonly tried: number;
    }
  | { readonly kind: "none"; readonly reason: string };

/**
 * The cheapest start between two moments that keeps what is wanted; of equals the earliest. Every quarter of an hour is
 * tried, each with its energy cut exactly at the tariff's edges.
 *
 * @throws BadInput for times that are none, an end before the beginning, or a wish to open without knowing when it is cool
 */
export function bestStart(input: BestStartInput): BestStart {
  const { tariff } = input;
  const energy = firingEnergy(input.firing);
  const earliestMs = instantOf(input.earliest, tariff.timeZone, "earliest");
  const latestMs = instantOf(input.latest, tariff.timeZone, "latest");
  checkSpan(earliestMs, latestMs, "latest", input.earliest, input.latest);
  const openMs = openAfterMs(input);
  const deadlineMs =
    input.wanted.kind === "open-by" && openMs !== null
      ? firstShowing(tariff.timeZone, minutesOfDay(input.wanted.time, "wanted.time"), earliestMs + openMs)
      : Number.POSITIVE_INFINITY;
  const spans = priceSpans(tariff, earliestMs, latestMs + lengthMs(energy));
  const isAllowed = openingHours(input);
  const choices: { startMs: number; cost: FiringCost }[] = [];
  for (const startMs of startsBetween(earliestMs, latestMs, (input.stepMin ?? 15) * MINUTE_MS)) {
    if (openMs !== null && (startMs + openMs > deadlineMs || !isAllowed(startMs + openMs))) continue;
    choices.push({ startMs, cost: costFrom(energy, tariff, startMs, spans) });
  }
  const [first] = choices;
  if (first === undefined) return { kind: "none", reason: noneText(input, openMs) };
  // A thousandth of the smallest coin is no reason to wait.
  const best = choices.reduce((a, b) => (b.cost.total < a.cost.total - 1e-5 ? b : a));
  const dearest = choices.reduce((a, b) => (b.cost.total > a.cost.total + 1e-5 ? b : a));
  const choice = ({ startMs, cost }: { startMs: number; cost: FiringCost }): StartChoice => ({
    startIso: new Date(startMs).toISOString(),
    startLocal: wallText(tariff.timeZone, startMs),
    opensIso: openMs === null ? null : new Date(startMs + openMs).toISOString(),
    opensLocal: openMs === null ? null : wallText(tariff.timeZone, startMs + openMs),
    cost,
  });
  return {
    kind: "found",
    best: choice(best),
    earliest: choice(first),
    dearest: choice(dearest),
    tried: choices.length,
  };
}

/** @throws BadInput where a span of starts ends before it begins, or is longer than a month */
export function checkSpan(earliestMs: number, latestMs: number, path: string, earliest: string, latest: string): void {
  if (latestMs >= earliestMs && latestMs - earliestMs <= LONGEST_SPAN_DAYS * DAY_MS) return;
  throw new BadInput({
    code: "out-of-range",
    path,
    found: latest,
    expected: `a time after ${earliest} and at most ${LONGEST_SPAN_DAYS} days later`,
  });
}

function openAfterMs({ openAfterMin, wanted, openHours }: BestStartInput): number | null {
  if (openAfterMin !== undefined && openAfterMin >= 0) return Math.ceil(openAfterMin * MINUTE_MS);
  if (wanted.kind === "cheapest" && openHours === undefined) return null;
  throw new BadInput({
    code: "missing-field",
    path: "openAfterMin",
    found: String(openAfterMin ?? "nothing"),
    expected: "minutes from the start until it may be opened, since the opening is to be at a certain time",
  });
}

/** The earliest itself, then every full step of the clock. */
function* startsBetween(earliestMs: number, latestMs: number, stepMs: number): Generator<number> {
  yield earliestMs;
  for (let at = (Math.floor(earliestMs / stepMs) + 1) * stepMs; at <= latestMs; at += stepMs) yield at;
}

function openingHours({ openHours, tariff }: BestStartInput): (atMs: number) => boolean {
  if (openHours === undefined) return () => true;
  const from = minutesOfDay(openHours.from, "openHours.from") * MINUTE_MS;
  const to = minutesOfDay(openHours.to, "openHours.to") * MINUTE_MS;
  return (atMs) => {
    const { msOfDay } = wallTime(tariff.timeZone, atMs);
    return from <= to ? msOfDay >= from && msOfDay <= to : msOfDay >= from || msOfDay <= to;
  };
}

/** The first instant from a moment on at which the clock shows a time of day; in an hour that is skipped, an hour later. */
function firstShowing(timeZone: string, minutes: number, fromMs: number): number {
  const { year, month, day } = wallTime(timeZone, fromMs);
  for (let later = 0; ; later++) {
    const shownMs = Date.UTC(year, month - 1, day + later) + minutes * MINUTE_MS;
    const instants = instantsShowing(timeZone, shownMs);
    const at = instants.find((each) => each >= fromMs) ?? (instants.length ? null : skippedTo(timeZone, shownMs));
    if (at !== null && at >= fromMs) return at;
  }
}

const skippedTo = (timeZone: string, shownMs: number): number => shownMs - offsetMs(timeZone, shownMs - DAY_MS);

function noneText({ earliest, latest, wanted, openHours }: BestStartInput, openMs: number | null): string {
  const after = openMs === null ? "" : ` It may be opened ${(openMs / 3_600_000).toFixed(1)} hours after its start.`;
  const hours = openHours === undefined ? "" : ` between ${openHours.from} and ${openHours.to}`;
  const by = wanted.kind === "open-by" ? ` by ${wanted.time}` : "";
  return `No start from ${earliest} to ${latest} lets it be opened${by}${hours}.${after} Widen the hours, or allow a later start.`;
}
