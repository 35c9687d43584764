import { COOL_STEPS } from "../firing/prediction/cool-steps.ts";
import type { Prediction } from "../firing/prediction/predict.ts";
import { readProgramme } from "../firing/programme/programme.ts";
import { readTariff } from "../firing/tariff/tariff.ts";
import { BadInput, shown } from "../measures/bad-input.ts";
import { formatTemperature, type TemperatureUnits } from "../measures/temperature.ts";
import { firingSheetPages } from "../sheets/firing/firing-pages.ts";
import { pagesToSvg } from "../sheets/pages-to-svg.ts";
import { pagesToPdf } from "../sheets/pdf/pages-to-pdf.ts";
import { firingSheet } from "../studio/firing-sheet.ts";
import { checkStart, type FiringStart, firingStart } from "../studio/firing-start.ts";
import { type Foretold, foretell } from "../studio/foretell.ts";
import { type StillClimbs, stillClimbs } from "../studio/still-climbs.ts";
import { calibrationOption } from "./calibration-option.ts";
import { type Command, type CommandCall, printJson, printLines } from "./command.ts";
import { readJsonFile, readPlanFile, readRequestFile, writeWholeFile } from "./files.ts";
import { choiceOption, numberOption } from "./options.ts";

/** `wareboard predict`: what this load will get from this programme in this kiln. */
export const predict: Command = {
  name: "predict",
  words: ["REQUEST.json", "PLAN.json", "PROGRAMME.json"],
  summary: "Foretell a firing: hours, energy, the curve, what every level gets, when it is cool.",
  options: {
    out: { type: "string" },
    paper: { type: "string" },
    units: { type: "string" },
    room: { type: "string" },
    calibration: { type: "string" },
    price: { type: "string" },
    tariff: { type: "string" },
    start: { type: "string" },
    until: { type: "string" },
    "open-by": { type: "string" },
    "open-from": { type: "string" },
  },
  optionHelp: {
    out: "draw the firing pages to this file, .pdf or .svg",
    paper: "a4 or letter (a4)",
    units: "C or F, for what is printed (C)",
    room: "the room's temperature in °C (20)",
    calibration: "what the kiln's own firings taught (calibration/1, as `wareboard learn` writes it)",
    price: "what a kilowatt-hour costs, in your own money",
    tariff: "a tariff (tariff/1): costs by its slots, and the best start; wants --start",
    start: "when it starts at the earliest, such as 2026-11-26T18:00 by the tariff's clock",
    until: "when it starts at the latest (a day after --start)",
    "open-by": "the lid should be ready to lift by this time of day, such as 09:00",
    "open-from": "with --open-by: and not be ready before this time of day",
  },
  examples: [
    "wareboard predict request.json plan.json programme.json",
    "wareboard predict request.json plan.json programme.json --calibration calibration.json",
    "wareboard predict request.json plan.json programme.json --price 0.28 --out firing.pdf",
    "wareboard predict request.json plan.json programme.json --tariff tariff.json --start 2026-11-26T18:00 --open-by 09:00",
  ],
  run: async (call) => {
    const request = readRequestFile(call.words[0] as string);
    const plan = readPlanFile(call.words[1] as string, request);
    const programme = readJsonFile(call.words[2] as string, readProgramme);
    const roomC = numberOption(call, "room", { least: -20, most: 50, otherwise: 20 });
    const price =
      call.options.price === undefined ? null : numberOption(call, "price", { least: 0, most: 1e6, otherwise: 0 });
    const units = choiceOption(call, "units", ["C", "F"], "C");
    const paper = choiceOption(call, "paper", ["a4", "letter"], "a4");
    const startOf = startQuestion(call, price !== null);
    const foretold = foretell(request, plan, programme, { roomC, calibration: calibrationOption(call) });
    const { prediction } = foretold;
    const start = startOf(prediction);
    const power = foretold.cone === null ? null : stillClimbs(request, plan, programme.kind, roomC, foretold.cone);
    const out = call.options.out;
    if (out !== undefined) {
      if (typeof out !== "string" || !/\.(pdf|svg)$/i.test(out)) {
        throw new BadInput({
          code: "wrong-option",
          path: "--out",
          found: shown(out),
          expected: "a file ending in .pdf or .svg",
        });
      }
      const pages = firingSheetPages(firingSheet(request, programme, foretold, { units, pricePerKWh: price, start }), {
        paper,
        units,
      });
      writeWholeFile(out, /\.pdf$/i.test(out) ? await pagesToPdf(pages) : pagesToSvg(pages));
    }
    if (call.json) printJson(jsonOf(foretold, price, start, power));
    else printLines(predictionText(foretold, price, start, power, units));
    return prediction.finished && start?.best.kind !== "none" ? 0 : 1;
  },
};

/** Reads what is asked of the start before anything is reckoned; a tariff says nothing without one. */
function startQuestion(call: CommandCall, priced: boolean): (prediction: Prediction) => FiringStart | null {
  const { tariff: path, start, until, "open-by": openBy, "open-from": openFrom } = call.options;
  const refuse = (option: string, found: string, expected: string): never => {
    throw new BadInput({ code: "wrong-option", path: option, found, expected });
  };
  if (typeof path !== "string") {
    const stray = (["start", "until", "open-by", "open-from"] as const).find(
      (each) => call.options[each] !== undefined,
    );
    if (stray) refuse(`--${stray}`, "no --tariff", "a tariff beside it, such as --tariff tariff.json");
    return () => null;
  }
  if (priced) refuse("--price", "a --tariff beside it", "one of the two");
  if (typeof start !== "string") return refuse("--start", "nothing", "when it starts, such as 2026-11-26T18:00");
  if (openFrom !== undefined && openBy === undefined) refuse("--open-from", "no --open-by", "both, or --open-by alone");
  const tariff = readJsonFile(path, readTariff);
  const text = (option: unknown): string | undefined => (typeof option === "string" ? option : undefined);
  const question = { start, until: text(until), openBy: text(openBy), openFrom: text(openFrom) };
  checkStart(tariff, question);
  return (prediction) => firingStart(prediction, tariff, question);
}

function jsonOf(
  { prediction, assumed, advice, cone }: Foretold,
  price: number | null,
  start: FiringStart | null,
  power: StillClimbs | null,
): object {
  const { firing, probe, ...rest } = prediction;
  const { sentences: _, ...timed } = start ?? { sentences: [] };
  return {
    ...rest,
    probe: { coneDown: probe.coneDown, next: probe.next, towardNext: probe.towardNext, ladder: probe.ladder },
    cone,
    cost: start?.cost.total ?? (price === null ? null : prediction.kWh * price),
    start: start === null ? null : timed,
    advice,
    elements: power,
    averagePowerW: (firing.kWh * 1000) / prediction.hours,
    assumed,
  };
}

function predictionText(
  foretold: Foretold,
  price: number | null,
  start: FiringStart | null,
  power: StillClimbs | null,
  units: TemperatureUnits,
): string[] {
  const { prediction, assumed } = foretold;
  const cost = price === null ? "" : `, costing ${(prediction.kWh * price).toFixed(2)}`;
  return [
    `Shut-off after ${hours(prediction.hours)}, near ${formatTemperature(prediction.peakC, units)}, with ${prediction.kWh.toFixed(1)} kWh${cost}.`,
    "",
    ...[...prediction.levels].reverse().map((level) => {
      const offset = Math.round(units === "F" ? (level.offsetC * 9) / 5 : level.offsetC);
      const against =
        offset === 0
          ? "as at the probe"
          : `${Math.abs(offset)} °${units} ${offset > 0 ? "hotter" : "cooler"} than at the probe`;
      return `  Level ${level.level + 1}   ${coneText(level)}   peak ${formatTemperature(level.peakC, units)}, ${against}`;
    }),
    "",
    ...COOL_STEPS.map(({ tempC, means }) => {
      const after = prediction.coolHours[String(tempC)];
      return `  Under ${formatTemperature(tempC, units).padEnd(7)} ${after === null || after === undefined ? "later than a week" : `${hours(after)} after shut-off`}. ${means}`;
    }),
    ...listed("Careful", [...prediction.troubles, ...prediction.warnings]),
    ...listed("When to start", start?.sentences ?? []),
    ...listed("Tried in this kiln with this load", foretold.advice),
    ...listed("The elements", power?.sentences ?? []),
    ...listed("Taken for granted", assumed),
    "",
    `  The arithmetic balances to ${prediction.energyResidual.toExponential(0)} of the energy given. Witness cones have the last word.`,
  ];
}

const listed = (name: string, lines: readonly string[]): string[] =>
  lines.length === 0 ? [] : ["", `  ${name}`, ...lines.map((line) => `    ${line}`)];

/** "cone 6 down, 40 % toward 7". */
function coneText(level: Prediction["levels"][number]): string {
  if (level.coneDown === null) return "no cone down";
  const toward = level.next === null ? "" : `, ${Math.round(level.towardNext * 100)} % toward ${level.next}`;
  return `cone ${level.coneDown} down${toward}`;
}

const hours = (value: number): string => {
  const minutes = Math.round(value * 60);
  return `${Math.floor(minutes / 60)} h ${String(minutes % 60).padStart(2, "0")} min`;
};
