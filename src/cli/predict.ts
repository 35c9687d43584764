import type { Prediction } from "../firing/prediction/predict.ts";
import { COOL_STEPS } from "../firing/prediction/predict.ts";
import { readProgramme } from "../firing/programme/programme.ts";
import { BadInput, shown } from "../measures/bad-input.ts";
import { formatTemperature, type TemperatureUnits } from "../measures/temperature.ts";
import { firingSheetPages } from "../sheets/firing/firing-pages.ts";
import { pagesToSvg } from "../sheets/pages-to-svg.ts";
import { pagesToPdf } from "../sheets/pdf/pages-to-pdf.ts";
import { firingSheet } from "../studio/firing-sheet.ts";
import { type Foretold, foretell } from "../studio/foretell.ts";
import { type Command, printJson, printLines } from "./command.ts";
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
    price: { type: "string" },
  },
  optionHelp: {
    out: "draw the firing pages to this file, .pdf or .svg",
    paper: "a4 or letter (a4)",
    units: "C or F, for what is printed (C)",
    room: "the room's temperature in °C (20)",
    price: "what a kilowatt-hour costs, in your own money",
  },
  examples: [
    "wareboard predict request.json plan.json programme.json",
    "wareboard predict request.json plan.json programme.json --price 0.28 --out firing.pdf",
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
    const foretold = foretell(request, plan, programme, { roomC });
    const { prediction } = foretold;
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
      const pages = firingSheetPages(firingSheet(request, programme, foretold, { units, pricePerKWh: price }), {
        paper,
        units,
      });
      writeWholeFile(out, /\.pdf$/i.test(out) ? await pagesToPdf(pages) : pagesToSvg(pages));
    }
    if (call.json) printJson(jsonOf(foretold, price));
    else printLines(predictionText(foretold, price, units));
    return prediction.finished ? 0 : 1;
  },
};

function jsonOf({ prediction, assumed }: Foretold, price: number | null): object {
  const { firing, probe, ...rest } = prediction;
  return {
    ...rest,
    probe: { coneDown: probe.coneDown, next: probe.next, towardNext: probe.towardNext, ladder: probe.ladder },
    cost: price === null ? null : prediction.kWh * price,
    averagePowerW: (firing.kWh * 1000) / prediction.hours,
    assumed,
  };
}

function predictionText(foretold: Foretold, price: number | null, units: TemperatureUnits): string[] {
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
    ...listed("What would even it out", foretold.advice),
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
