import { BadInput } from "../../measures/bad-input.ts";
import { celsiusFromFahrenheit } from "../../measures/temperature.ts";
import type { LogTable } from "./log-columns.ts";
import type { LogOptions, LogQuestion } from "./log-reading.ts";
import type { RawColumn } from "./probe-columns.ts";

/** No kiln of a studio is hotter, °C: what is was another unit. */
const HOTTEST_C = 1450;
/** From here on a number stands for a broken probe: 9999, 32767. */
const NO_READING = 4000;
/** A room is no colder; a firing that got no hotter was none. */
const COLDEST_ROOM_C = 4;
const COOLEST_FIRING_C = 540;

/** The unit for columns that do not name theirs: from a unit column or the lines above, or the only one possible. */
export function unitOf(
  table: LogTable,
  raw: readonly RawColumn[],
  options: LogOptions,
): "C" | "F" | { readonly unit: "C" | "F"; readonly note: string } | LogQuestion {
  const unnamed = raw.filter(({ column, unit }) => column.temperatureUnit === null && unit === null);
  if (unnamed.length === 0) return "C";
  if (options.temperature) return options.temperature;
  const neighbours = new Set(
    raw.map(({ column, unit }) => column.temperatureUnit ?? unit).filter((unit) => unit !== null),
  );
  if (neighbours.size === 1) return [...neighbours][0] as "C" | "F";
  const written = writtenUnit(table);
  if (written) return { unit: written, note: `°${written} is what the file itself says.` };
  const values = unnamed.map(({ values }) => values.filter((value) => value < NO_READING));
  const first = values[0]?.[0] ?? Number.NaN;
  const peak = values.reduce((most, each) => each.reduce((a, b) => Math.max(a, b), most), Number.NEGATIVE_INFINITY);
  const canBeC = peak <= HOTTEST_C;
  const peakIfF = celsiusFromFahrenheit(peak);
  const canBeF = celsiusFromFahrenheit(first) >= COLDEST_ROOM_C && peakIfF >= COOLEST_FIRING_C && peakIfF <= HOTTEST_C;
  if (!canBeC && !canBeF) {
    const found = `temperatures from ${first} to ${peak}`;
    throw new BadInput({
      code: "no-temperature",
      path: unnamed[0]?.column.name ?? "",
      found,
      expected: `a kiln's temperatures, up to ${HOTTEST_C} °C`,
    });
  }
  if (canBeC !== canBeF) {
    const unit = canBeC ? "C" : "F";
    return { unit, note: `Read as °${unit}: from ${first} to ${peak} no firing goes in the other unit.` };
  }
  const inC = (value: number): string => `${celsiusFromFahrenheit(value).toFixed(0)} °C`;
  return {
    kind: "question",
    about: "temperature",
    question: `Are the temperatures °C or °F? They go from ${first} to ${peak}.`,
    choices: [
      { option: { temperature: "C" }, means: `a firing to ${peak} °C` },
      { option: { temperature: "F" }, means: `a firing to ${peak} °F, which is ${inC(peak)}` },
    ],
  };
}

/** More readings than one spike has. */
const TOO_MANY = 4;

/**
 * Makes sure a column does not hold another unit than its name says: readings far hotter than any kiln, too many for a
 * broken contact.
 *
 * @throws BadInput naming the column, how hot it would be, and what that is in the other unit
 */
export function refuseWrongUnit(name: string, unit: "C" | "F", values: Float64Array): void {
  const inC = (value: number): number => (unit === "F" ? celsiusFromFahrenheit(value) : value);
  const hottest = values.filter((value) => value < NO_READING && inC(value) > HOTTEST_C).map(inC);
  if (hottest.length < TOO_MANY) return;
  const peakC = hottest.reduce((most, each) => Math.max(most, each), HOTTEST_C);
  const otherwise = unit === "C" ? `; if these are °F, it is ${Math.round(celsiusFromFahrenheit(peakC))} °C` : "";
  throw new BadInput({
    code: "wrong-unit",
    path: name,
    found: `${hottest.length} readings up to ${Math.round(peakC)} °C`,
    expected: `a kiln's temperatures, up to ${HOTTEST_C} °C${otherwise}: name the column for the unit it holds`,
  });
}

function writtenUnit(table: LogTable): "C" | "F" | null {
  const unitColumn = table.columns.find((column) => /^units?$/i.test(column.name));
  const said = unitColumn
    ? table.rows.map((row) => row.cells[unitColumn.place] ?? "")
    : table.preamble.filter((row) => /unit|°|temp/i.test(row.cells.join(" "))).map((row) => row.cells.join(" "));
  const units = new Set(
    said
      .map((text) => /(?:^|[\s:=°("])(?:deg\s*)?(C|F|celsius|fahrenheit)\b/i.exec(text)?.[1]?.[0]?.toUpperCase())
      .filter(Boolean),
  );
  return units.size === 1 ? ([...units][0] as "C" | "F") : null;
}
