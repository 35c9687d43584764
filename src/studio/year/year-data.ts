import type { CalibrationRecord } from "../records/calibration-record.ts";
import type { FiringRecord } from "../records/firing-record.ts";
import type { LoadRecord } from "../records/load-record.ts";
import type { Reading, ReadingSeries } from "../records/reading.ts";
import type { UpkeepRecord } from "../records/upkeep-record.ts";
import { MADE_YEAR } from "./made-year.ts";
import { linearAt, straightened } from "./straightened.ts";

/** Which year the demo shows: lived once, kept as data, for living it takes too long to wait for. */
export const DEMO_YEAR = { beginsAt: "2026-01-05T00:00:00.000Z", seed: 1 } as const;

const MINUTE_MS = 60_000;
/** A kept curve is this near to what was read, °C: a thermometer's own scatter. */
const NEAR_C = 2;
/** How often the demo's readings are told again. */
const EVERY_MIN = 5;

/** What a year leaves behind that a demo shows: its firings, loads, upkeep, what was learned, and the temperatures. */
export interface PastYear {
  readonly firings: readonly FiringRecord[];
  readonly loads: readonly LoadRecord[];
  readonly upkeep: readonly UpkeepRecord[];
  readonly calibrations: readonly CalibrationRecord[];
  readonly readings: readonly ReadingSeries[];
}

/** The same as data: parts that many loads share are kept once, temperatures as a few points of their curve. */
export interface YearData {
  readonly firings: readonly FiringRecord[];
  readonly loads: readonly object[];
  /** By the number that stands in their place. */
  readonly shared: readonly unknown[];
  readonly upkeep: readonly UpkeepRecord[];
  readonly calibrations: readonly CalibrationRecord[];
  readonly curves: readonly (readonly [firingId: string, probe: string, points: readonly (readonly number[])[]])[];
}

/** A lived year as data; a load that was never fired is left out. */
export function yearAsData(
  year: Omit<PastYear, "readings"> & { readonly readings: ReadonlyMap<string, readonly ReadingSeries[]> },
): YearData {
  const shared: unknown[] = [];
  const numbers = new Map<string, number>();
  const share = (value: unknown): number => {
    const text = JSON.stringify(value);
    const known = numbers.get(text) ?? shared.push(value) - 1;
    numbers.set(text, known);
    return known;
  };
  const fired = new Set(year.firings.map(({ loadId }) => loadId));
  const loads = year.loads
    .filter(({ id }) => fired.has(id))
    .map(({ request, ...load }) => {
      const { kiln, furniture, ware, ...rest } = request;
      const batches = ware.map(({ name, count, ...piece }) => [name, count, share(piece)]);
      return { ...load, request: { ...rest, kiln: share(kiln), furniture: share(furniture), ware: batches } };
    });
  const curves = [...year.readings].flatMap(([id, series]) =>
    series.map(({ probe, readings }) => [id, probe, straightened(pointsOf(readings), NEAR_C)] as const),
  );
  const firings = year.firings.map((firing) => roundedForetelling(firing));
  return { firings, loads, shared, upkeep: year.upkeep, calibrations: year.calibrations, curves } as YearData;
}

function pointsOf(readings: readonly Reading[]): (readonly [number, number])[] {
  const startMs = Date.parse(readings[0]?.at ?? "");
  return readings.map(({ at, tempC }) => [Math.round((Date.parse(at) - startMs) / MINUTE_MS), tempC]);
}

function roundedForetelling(firing: FiringRecord): FiringRecord {
  const { foretold } = firing;
  if (foretold === undefined) return firing;
  const curve = straightened(foretold.curve as [number, number][], 1).map(([minute, celsius]): [number, number] => [
    Math.round(minute * 10) / 10,
    Math.round(celsius * 10) / 10,
  ]);
  const kWhEachHour = (foretold.kWhEachHour ?? []).map((each) => Math.round(each * 1000) / 1000);
  return { ...firing, foretold: { ...foretold, curve, kWhEachHour } };
}

/**
 * The demo's past year, moved so that it ends at a moment, in one of the demo's kilns.
 *
 * @param endsAt ISO 8601 in UTC
 */
export function pastYear(endsAt: string, kilnId: string): PastYear {
  const data = JSON.parse(MADE_YEAR) as YearData;
  const lastMs = Math.max(...data.firings.map(({ endedAt }) => Date.parse(endedAt ?? DEMO_YEAR.beginsAt)));
  // By whole minutes: what she wrote down on the minute stays so.
  const byMs = Math.round((Date.parse(endsAt) - lastMs) / MINUTE_MS) * MINUTE_MS;
  const moved = <Kept>(kept: Kept): Kept =>
    JSON.parse(JSON.stringify(kept), (key, value: unknown) => {
      if (key === "kilnId") return kilnId;
      return typeof value === "string" && A_MOMENT.test(value) ? later(value, byMs) : value;
    }) as Kept;
  const loads = data.loads.map((load) => moved(whole(load as CompactLoad, data.shared)));
  const firings = moved(data.firings);
  const starts = new Map(firings.map(({ id, startedAt }) => [id, startedAt ?? endsAt]));
  const readings = data.curves.map(
    ([firingId, probe, points]): ReadingSeries => ({
      firingId,
      probe,
      readings: toldAgain(points, starts.get(firingId) as string),
    }),
  );
  return { firings, loads, readings, upkeep: moved(data.upkeep), calibrations: moved(data.calibrations) };
}

const A_MOMENT = /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}Z$/;
const later = (moment: string, ms: number): string => new Date(Date.parse(moment) + ms).toISOString();

interface CompactLoad extends Omit<LoadRecord, "request"> {
  readonly request: { readonly kiln: number; readonly furniture: number; readonly ware: [string, number, number][] };
}

function whole({ request, ...load }: CompactLoad, shared: readonly unknown[]): LoadRecord {
  const ware = request.ware.map(([name, count, piece]) => ({ name, count, ...(shared[piece] as object) }));
  return {
    ...load,
    request: { ...request, kiln: shared[request.kiln], furniture: shared[request.furniture], ware },
  } as LoadRecord;
}

function toldAgain(points: readonly (readonly number[])[], startedAt: string): Reading[] {
  const last = points.at(-1)?.[0] ?? 0;
  return Array.from({ length: Math.floor(last / EVERY_MIN) + 1 }, (_, i) => ({
    at: later(startedAt, i * EVERY_MIN * MINUTE_MS),
    tempC: Math.round(10 * linearAt(points, i * EVERY_MIN)) / 10,
  }));
}
