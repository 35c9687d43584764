import type { Programme } from "../../firing/programme/programme.ts";
import type { Tariff } from "../../firing/tariff/tariff.ts";
import { type FiringStart, firingStart, type StartQuestion } from "../firing-start.ts";
import type { CalibrationRecord } from "../records/calibration-record.ts";
import type { ForetoldRecord } from "../records/firing-parts.ts";
import type { LoadRecord } from "../records/load-record.ts";
import { foretellLoad } from "./foretold-record.ts";

/** Without a tariff every hour costs the same. */
export const NO_TARIFF: Tariff = { format: "tariff/1", name: "any hour alike", timeZone: "UTC", pricePerKWh: 0 };

/** A load foretold, and when to start it. */
export interface StartChoices {
  readonly foretold: ForetoldRecord;
  readonly start: FiringStart;
}

/**
 * When to start a load's firing: what it costs at the asked start, the cheapest start in the span, one that lets her
 * open by a wanted hour. The one call behind the screen that prepares a firing.
 *
 * @param tariff hers; `NO_TARIFF` with her time zone where she has none
 * @throws BadInput as `foretellLoad` and `firingStart` do
 */
export function startChoices(
  wish: {
    readonly load: LoadRecord;
    readonly programme: Programme;
    readonly calibration: CalibrationRecord | null;
    readonly roomC?: number;
  },
  tariff: Tariff,
  question: StartQuestion,
): StartChoices {
  const { prediction, foretold } = foretellLoad({ ...wish, tariff, startAt: question.start });
  return { foretold, start: firingStart(prediction, tariff, question) };
}
