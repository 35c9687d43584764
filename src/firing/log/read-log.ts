import { BadInput } from "../../measures/bad-input.ts";
import type { Curve } from "../heat-work/curve.ts";
import { csvRows } from "./csv-rows.ts";
import { logTable } from "./log-columns.ts";
import { orderLog } from "./log-order.ts";
import type { Dropped, LogOptions, LogProbe, LogReading, TemperatureLog } from "./log-reading.ts";
import { logTemperatures, type ProbeColumn } from "./log-temperatures.ts";
import { logTimes } from "./log-times.ts";
import { spikes } from "./spikes.ts";

/** With fewer readings there is no firing to see. */
const FEWEST = 5;

/**
 * Reads a temperature log as instruments write it: elapsed or clock time in many spellings, °C or °F, any separator,
 * decimal commas, several probes. Where two readings of the file are possible it asks; what it leaves out it lists.
 *
 * @param text the file's text, which is never altered
 * @param options answers to earlier questions: read again with the chosen `option` merged in
 * @returns the log, or the next question
 * @throws BadInput where the file is no temperature log
 */
export function readLog(text: string, options: LogOptions = {}): LogReading {
  const table = logTable(csvRows(text));
  if (table === null) throw notALog("no rows of a time and a temperature");
  const times = logTimes(table, options);
  if (times === null)
    throw notALog(`no column of time among ${table.columns.map(({ name }) => `"${name}"`).join(", ")}`);
  if (times.kind === "question") return times;
  const temperatures = logTemperatures(table, options);
  if (temperatures.kind === "question") return temperatures;
  const first = temperatures.probes[0];
  if (!first) throw notALog("no temperature that can be read");
  const ordered = orderLog(times, table.rows, first.tempC, options);
  if (ordered.kind === "question") return ordered;
  if (ordered.kept.length < FEWEST) {
    throw notALog(`${ordered.kept.length} ${ordered.kept.length === 1 ? "reading" : "readings"}`);
  }
  const place = new Map(ordered.kept.map((row, i) => [row, i]));
  const dropped: Dropped[] = [...ordered.dropped];
  const probes = temperatures.probes.map((probe): LogProbe => {
    const tempC = Float64Array.from(ordered.kept, (row) => probe.tempC[row] as number);
    for (const row of ordered.kept) {
      if (!Number.isFinite(probe.tempC[row] as number))
        dropped.push(left(row, probe, "no temperature that can be read"));
    }
    for (const at of spikes(ordered.minutes, tempC)) {
      dropped.push(
        left(ordered.kept[at] as number, probe, `${(tempC[at] as number).toFixed(0)} °C is a spike no kiln makes`),
      );
      tempC[at] = Number.NaN;
    }
    return { name: probe.name, tempC };
  });
  dropped.sort((a, b) => a.line - b.line);
  const preamble =
    table.preamble.length === 0 ? [] : [`${table.preamble.length} lines above the header are not readings.`];
  const startedAt = place.get(0) === 0 ? times.startedAt : null;
  const notes = [...preamble, ...times.notes, ...temperatures.notes, ...ordered.notes];
  return { kind: "log", minutes: ordered.minutes, probes, startedAt, dropped, notes };

  function left(row: number, probe: ProbeColumn, why: string): Dropped {
    const { line, cells } = table?.rows[row] ?? { line: 0, cells: [] };
    return { line, found: cells[probe.place] ?? "", why: `${probe.name}: ${why}` };
  }
}

const notALog = (found: string): BadInput =>
  new BadInput({
    code: "not-a-log",
    path: "",
    found,
    expected: `a temperature log as CSV: a header row, then a time and a temperature a row, at least ${FEWEST} of them`,
  });

/**
 * One probe's curve, for heat work: its readings without those dropped.
 *
 * @param probe its place, from 0
 */
export function probeCurve(log: TemperatureLog, probe = 0): Curve {
  const { tempC } = log.probes[probe] as LogProbe;
  const kept = (_: number, at: number): boolean => Number.isFinite(tempC[at]);
  return { minutes: log.minutes.filter(kept), tempC: tempC.filter(kept) };
}
