import { LID_LIFTS_C } from "../firing/prediction/cool-steps.ts";
import type { Prediction } from "../firing/prediction/predict.ts";
import { type BestStart, bestStart, checkSpan } from "../firing/tariff/best-start.ts";
import { type FiringCost, firingCost } from "../firing/tariff/firing-cost.ts";
import { instantOf } from "../firing/tariff/instant.ts";
import type { Tariff } from "../firing/tariff/tariff.ts";
import { minutesOfDay } from "../firing/tariff/time-of-day.ts";

const DAY_MS = 86_400_000;

/** When she could start, and when she wants to open. Times by the tariff's own clock where they carry no offset. */
export interface StartQuestion {
  /** The start to reckon, and the earliest one to consider; ISO 8601. */
  readonly start: string;
  /** The latest start to consider; a day later where left out. */
  readonly until?: string | undefined;
  /** Hours of the day: open by the first such time that a start at `start` can meet, and not before `openFrom`. */
  readonly openBy?: string | undefined;
  readonly openFrom?: string | undefined;
}

/** What a firing costs at a start, and the start that would cost least. */
export interface FiringStart {
  readonly cost: FiringCost;
  readonly currency: string;
  /** Hours from the start until the lid may be lifted; null where it takes over a week. */
  readonly openAfterHours: number | null;
  readonly best: BestStart;
  /** The same in sentences. */
  readonly sentences: readonly string[];
}

/**
 * Makes sure the times of a question are times, before anything long is reckoned.
 *
 * @throws BadInput naming the option
 */
export function checkStart(tariff: Tariff, { start, until, openBy, openFrom }: StartQuestion): void {
  const startMs = instantOf(start, tariff.timeZone, "--start");
  if (until !== undefined) checkSpan(startMs, instantOf(until, tariff.timeZone, "--until"), "--until", start, until);
  if (openBy !== undefined) minutesOfDay(openBy, "--open-by");
  if (openFrom !== undefined) minutesOfDay(openFrom, "--open-from");
}

/**
 * Reckons a foretold firing's cost by the tariff's slots, and the cheapest start within the wished span.
 *
 * @throws BadInput for times that are none
 */
export function firingStart(prediction: Prediction, tariff: Tariff, question: StartQuestion): FiringStart {
  const { firing } = prediction;
  const { start, openBy, openFrom } = question;
  const cost = firingCost(firing, tariff, start);
  const startMs = instantOf(start, tariff.timeZone, "start");
  const until = question.until ?? new Date(startMs + DAY_MS).toISOString();
  const openAfterHours = openAfterHoursOf(prediction);
  const currency = tariff.currency ?? "";
  const best: BestStart =
    openAfterHours === null && openBy !== undefined
      ? { kind: "none", reason: "It takes over a week until the lid may be lifted: no opening can be promised." }
      : bestStart({
          firing,
          tariff,
          earliest: start,
          latest: until,
          wanted: openBy === undefined ? { kind: "cheapest" } : { kind: "open-by", time: openBy },
          openAfterMin: openAfterHours === null ? undefined : openAfterHours * 60,
          openHours: openFrom === undefined || openBy === undefined ? undefined : { from: openFrom, to: openBy },
        });
  return { cost, currency, openAfterHours, best, sentences: sentencesOf(cost, best, currency, question) };
}

/** Hours from the start until the lid may be lifted; null where it takes over a week. */
export function openAfterHoursOf({ hours, coolHours }: Pick<Prediction, "hours" | "coolHours">): number | null {
  const cooling = coolHours[String(LID_LIFTS_C)] ?? null;
  return cooling === null ? null : hours + cooling;
}

/** A sum with its currency, as far as the tariff says one. */
export const moneyText = (value: number, currency: string): string =>
  `${value.toFixed(2)}${currency === "" ? "" : ` ${currency}`}`;

function sentencesOf(cost: FiringCost, best: BestStart, currency: string, { start }: StartQuestion): string[] {
  const sum = (value: number): string => moneyText(value, currency);
  const slots = cost.slots.map(({ slot, kWh }) => `${kWh.toFixed(1)} kWh ${slot === null ? "at other times" : slot}`);
  const demand = cost.demandCost > 0 ? `, ${sum(cost.demandCost)} of it for the highest draw` : "";
  const carbon = cost.carbonKg === null ? "" : `, and ${cost.carbonKg.toFixed(1)} kg of carbon dioxide`;
  const first = `Started at ${start} it costs ${sum(cost.total)} (${slots.join(", ")}${demand})${carbon}.`;
  if (best.kind === "none") return [first, best.reason];
  const opens = best.best.opensLocal === null ? "" : `; the lid may be lifted from ${best.best.opensLocal}`;
  const saved = best.dearest.cost.total - best.best.cost.total;
  const against =
    saved < 0.005
      ? "; every start that fits costs the same"
      : `, ${sum(saved)} less than the dearest start that fits, ${best.dearest.startLocal}`;
  return [first, `Best start: ${best.best.startLocal}, costing ${sum(best.best.cost.total)}${against}${opens}.`];
}
