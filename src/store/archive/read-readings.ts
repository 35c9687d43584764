import { parse } from "csv-parse/sync";
import { shown } from "../../measures/bad-input.ts";
import { checkReadings, type ReadingSeries } from "../../studio/records/reading.ts";
import { type ArchiveCard, readingsFile } from "./archive-format.ts";
import { asText, refuse } from "./archive-refusals.ts";

const COLUMNS = ["time", "tempC"];

/**
 * Reads an archive's temperatures.
 *
 * @param firings the ids of the firings in it
 * @param takeOut gives the bytes of an entry
 */
export function readReadings(
  card: ArchiveCard,
  firings: ReadonlySet<string>,
  takeOut: (file: string) => Uint8Array,
): ReadingSeries[] {
  const seen = new Set<string>();
  return card.readings.map(({ firingId, probe, file }, i) => {
    const path = `readings[${i}]`;
    if (!firings.has(firingId)) refuse("missing-reference", `firing ${shown(firingId)}`, "a firing of the card", path);
    const key = JSON.stringify([firingId, probe]);
    if (seen.has(key)) refuse("id-taken", `${shown(probe)} of one firing twice`, "a probe's readings once", path);
    seen.add(key);
    if (file !== readingsFile(i)) refuse("wrong-entry", shown(file), `"${readingsFile(i)}"`, `${path}.file`);
    const readings = parseReadings(asText(takeOut(file), file), file);
    checkReadings(probe, readings, file);
    readings.forEach(({ at }, row) => {
      const before = readings[row - 1];
      if (before && at <= before.at) refuse("wrong-order", at, `a moment after ${before.at}`, `${file}[${row}]`);
    });
    return { firingId, probe, readings };
  });
}

function parseReadings(text: string, file: string) {
  const [heading, ...rows] = inRows(text, file);
  if (heading?.join() !== COLUMNS.join()) refuse("wrong-heading", shown(heading?.join()), `"${COLUMNS.join()}"`, file);
  return rows.map(([at = "", temperature = ""], row) => {
    const tempC = temperature.trim() === "" ? Number.NaN : Number(temperature);
    if (!Number.isFinite(tempC)) refuse("not-a-number", shown(temperature), "degrees Celsius", `${file}[${row}]`);
    return { at, tempC };
  });
}

function inRows(text: string, file: string): string[][] {
  try {
    return parse(text, { record_delimiter: ["\n", "\r\n"] });
  } catch (error) {
    return refuse("not-csv", error instanceof Error ? error.message : String(error), "a row of two cells a line", file);
  }
}
