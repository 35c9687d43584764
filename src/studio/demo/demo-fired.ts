import type { ParameterValues } from "../../firing/calibration/parameters.ts";
import { CONES, type ConeName, conePlace } from "../../firing/cones/cone.ts";
import { heatWork } from "../../firing/heat-work/heat-work.ts";
import type { Prediction } from "../../firing/prediction/predict.ts";
import type { Programme, ProgrammeFile } from "../../firing/programme/programme.ts";
import type { Tariff } from "../../firing/tariff/tariff.ts";
import { type Chance, seededChance } from "../../measures/seeded-chance.ts";
import { checklistFor } from "../firings/checklist.ts";
import { foretellLoad, USUAL_ROOM_C } from "../firings/foretold-record.ts";
import { readingsOfCurve } from "../firings/readings-of-curve.ts";
import type { CalibrationRecord } from "../records/calibration-record.ts";
import type { FaultName, Grade } from "../records/faults.ts";
import type { Outcome, SeenCone } from "../records/firing-parts.ts";
import type { FiringRecord } from "../records/firing-record.ts";
import type { LoadRecord } from "../records/load-record.ts";
import type { ReadingSeries } from "../records/reading.ts";
import { firedInTruth, openedAfterMin } from "../year/true-firing.ts";

const MINUTE_MS = 60_000;
/** How often the demo's logger speaks, and how far its thermometer scatters. */
const EVERY_MIN = 2;
const SCATTER_C = 1.2;

/** What is to be fired in the demo's past. */
export interface DemoFiringWish {
  readonly id: string;
  readonly name: string;
  readonly load: LoadRecord;
  readonly programme: Programme;
  readonly startedAt: string;
  /** What the meter showed before. */
  readonly meterKWh: number;
  readonly truth: ParameterValues;
  readonly tariff: Tariff;
  /** What was known of the kiln when it was prepared. */
  readonly calibration: CalibrationRecord | null;
  readonly seed: number;
  /** Pieces that did not come out good: which of the load's placements, counted from the floor. */
  readonly faults: readonly (readonly [
    piece: number,
    grade: Exclude<Grade, "good">,
    faults: readonly FaultName[],
    note: string,
  ])[];
}

/** A firing of the demo's past: foretold as the kiln was known, gone as it is in truth, seen as she would have. */
export function demoFired(wish: DemoFiringWish): { readonly firing: FiringRecord; readonly readings: ReadingSeries } {
  const { id, name, load, programme, startedAt, truth, tariff } = wish;
  const chance = seededChance(wish.seed);
  const { foretold } = foretellLoad({ load, programme, calibration: wish.calibration, tariff, startAt: startedAt });
  const went = firedInTruth({ load, programme, truth, roomC: USUAL_ROOM_C });
  const at = (minutes: number): string =>
    new Date(Date.parse(startedAt) + Math.round(minutes) * MINUTE_MS).toISOString();
  const { shutOffMin } = went.firing;
  const openedMin = openedAfterMin(went);
  const [shutOffAt, endedAt] = [at(shutOffMin), at(openedMin)];
  const probe = load.request.kiln.probes?.[0]?.name ?? "thermocouple";
  const { minutes, probeC } = went.firing;
  const readings = readingsOfCurve({ minutes, tempC: probeC }, startedAt, {
    ...{ everyMin: EVERY_MIN, scatterC: SCATTER_C, chance },
  });
  const firing: FiringRecord = {
    ...{ id, kilnId: load.kilnId, loadId: load.id, name, state: "finished" },
    programme: JSON.parse(JSON.stringify(programme)) as ProgrammeFile,
    ...{ startedAt, endedAt, plannedStartAt: startedAt, shutOffAt, foretold },
    meterReadings: [
      { at: startedAt, kWh: wish.meterKWh },
      { at: endedAt, kWh: round(wish.meterKWh + went.kWh, 1) },
    ],
    checklist: checklistFor(programme.kind).map(({ item }, i) => ({ item, at: at(i - 40) })),
    cones: seenCones(went, foretold.cone, chance),
    outcomes: outcomes(load, wish.faults, endedAt),
    ...{ createdAt: at(-90), changedAt: endedAt },
  };
  return { firing, readings: { firingId: id, probe, readings: readings.filter((each) => each.at <= endedAt) } };
}

/** On each shelf the cone below the wanted one, that one, and the one above, each bent as far as its shelf's heat bent it. */
function seenCones({ firing }: Prediction, wanted: ConeName | null, chance: Chance): SeenCone[] {
  if (wanted === null) return [];
  const whole = CONES.filter((cone) => !cone.endsWith(".5"));
  const middle = whole.findIndex((cone) => conePlace(cone) >= conePlace(wanted));
  return firing.levelC.flatMap((tempC, level) => {
    const work = heatWork({ minutes: firing.minutes, tempC });
    return whole.slice(Math.max(0, middle - 1), middle + 2).flatMap((cone): SeenCone[] => {
      const bent = work.cones.find((each) => each.cone === cone)?.bendDeg;
      if (bent === undefined) return [];
      // Read by eye, to five degrees.
      const seen = Math.min(90, Math.max(8, 5 * Math.round((bent + 4 * (chance.next() - 0.5)) / 5)));
      return [{ level, cone, bendDeg: seen, place: level === 0 ? "at the front" : "by the spyhole" }];
    });
  });
}

function outcomes({ plan }: LoadRecord, faults: DemoFiringWish["faults"], at: string): Outcome[] {
  const places = (plan?.levels ?? []).flatMap(({ placements }, level) =>
    placements.map((_, placement) => ({ level, placement })),
  );
  const bad = new Map(
    faults.map(([piece, grade, found, note]) => [piece % Math.max(1, places.length), { grade, found, note }]),
  );
  return places.map((place, i): Outcome => {
    const seen = bad.get(i);
    return { ...place, grade: seen?.grade ?? "good", faults: [...(seen?.found ?? [])], note: seen?.note ?? "", at };
  });
}

const round = (value: number, places: number): number => Math.round(value * 10 ** places) / 10 ** places;
