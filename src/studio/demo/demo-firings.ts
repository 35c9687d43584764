import type { Programme, ProgrammeFile } from "../../firing/programme/programme.ts";
import type { Tariff } from "../../firing/tariff/tariff.ts";
import { checklistFor } from "../firings/checklist.ts";
import type { MeasuredRecords } from "../firings/firing-evidence.ts";
import { foretellLoad } from "../firings/foretold-record.ts";
import { learnFromFirings } from "../firings/learn.ts";
import type { CalibrationRecord } from "../records/calibration-record.ts";
import type { FiringRecord } from "../records/firing-record.ts";
import type { LoadRecord } from "../records/load-record.ts";
import type { ReadingSeries } from "../records/reading.ts";
import { type DemoFiringWish, demoFired } from "./demo-fired.ts";
import { DEMO_TRUTH } from "./demo-kiln-truth.ts";
import type { DemoProgrammeName } from "./demo-programmes.ts";
import type { DemoTime } from "./demo-time.ts";

/** The loads of the demo that were or are to be fired. */
export interface DemoFiringLoads {
  readonly bisque: LoadRecord;
  readonly glaze: LoadRecord;
  readonly trial: LoadRecord;
  readonly market: LoadRecord;
}

/** The demo's firings by the word its notes know them by, what was read of them, what they taught. */
export interface DemoFirings {
  readonly bisque: FiringRecord;
  readonly glaze: FiringRecord;
  readonly trial: FiringRecord;
  readonly next: FiringRecord;
  readonly earlier: readonly FiringRecord[];
  readonly readings: readonly ReadingSeries[];
  readonly calibrations: readonly CalibrationRecord[];
}

/**
 * Three firings with all that was seen of them, the one she prepares, and those of the weeks before.
 *
 * @param known what the big kiln had taught before its elements were changed
 */
export function demoFirings(
  loads: DemoFiringLoads,
  programmes: Readonly<Record<DemoProgrammeName, Programme>>,
  tariff: Tariff,
  known: CalibrationRecord | null,
  time: DemoTime,
  newId: () => string,
): DemoFirings {
  const fire = (wish: Omit<DemoFiringWish, "id" | "tariff">) => demoFired({ id: newId(), tariff, ...wish });
  const learn = (
    daysAgo: number,
    fired: ReturnType<typeof demoFired>,
    load: LoadRecord,
    earlier: CalibrationRecord | null,
  ) => learned(time.ago(daysAgo), { firing: fired.firing, load, readings: [fired.readings] }, earlier, newId());
  const bisque = fire({
    ...{ name: "bisque, full to the lid", load: loads.bisque, programme: programmes.bisque, truth: DEMO_TRUTH.big },
    ...{ startedAt: time.ago(24, 300), meterKWh: 4127.2, seed: 11, calibration: known },
    faults: [
      [3, "lost", ["burst"], "thick foot, not quite dry"],
      [9, "second", ["drying crack"], "at the handle; will hold flowers"],
    ],
  });
  const first = learn(22, bisque, loads.bisque, known);
  const glaze = fire({
    ...{ name: "glaze, cone 6", load: loads.glaze, programme: programmes.glaze, truth: DEMO_TRUTH.big },
    ...{ startedAt: time.ago(18, 300), meterKWh: 4174.9, seed: 12, calibration: first },
    faults: [
      [1, "second", ["pinholes"], "inside, three of them"],
      [5, "second", ["under-fired"], "still a little dry to the touch"],
      [14, "lost", ["running", "stuck"], "slate over ash, no cookie"],
      [17, "lost", ["dunting"], "clean through, sharp edges"],
      [21, "second", ["kiln debris"], "a crumb on the rim; ground off"],
    ],
  });
  const second = learn(16, glaze, loads.glaze, first);
  const trial = fire({
    ...{ name: "tide and slate, trial", load: loads.trial, programme: programmes.trial, truth: DEMO_TRUTH.small },
    ...{ startedAt: time.ago(13, 200), meterKWh: 4229.5, seed: 13, calibration: null },
    faults: [
      [4, "second", ["running"], "ran onto its cookie"],
      [8, "lost", ["running", "stuck"], "cookie and all"],
    ],
  });
  const next = prepared(loads.market, programmes.glaze, second, tariff, time, newId);
  return {
    ...{ bisque: bisque.firing, glaze: glaze.firing, trial: trial.firing, next },
    earlier: earlierFirings(loads.glaze.kilnId, programmes, time, newId),
    readings: [bisque.readings, glaze.readings, trial.readings],
    calibrations: [first, second],
  };
}

/** What one firing taught, on top of what the one before had. */
function learned(at: string, fired: MeasuredRecords, earlier: CalibrationRecord | null, id: string): CalibrationRecord {
  const { kilnId, id: firingId } = fired.firing;
  const taught = learnFromFirings([fired], earlier);
  return { id, kilnId, at, firingIds: [firingId], ...taught, createdAt: at, changedAt: at };
}

/** The firing she prepares: tomorrow evening, foretold from what the kiln has taught. */
function prepared(
  load: LoadRecord,
  programme: Programme,
  calibration: CalibrationRecord,
  tariff: Tariff,
  time: DemoTime,
  newId: () => string,
): FiringRecord {
  const plannedStartAt = time.ago(-1);
  const { foretold } = foretellLoad({ load, programme, calibration, tariff, startAt: plannedStartAt });
  return {
    ...{ id: newId(), kilnId: load.kilnId, loadId: load.id, name: load.name, state: "planned" },
    programme: JSON.parse(JSON.stringify(programme)) as ProgrammeFile,
    ...{ startedAt: null, endedAt: null, meterReadings: [], plannedStartAt, foretold },
    checklist: checklistFor(programme.kind).map(({ item }, i) => ({
      item,
      at: i < 3 ? time.ago(0, 30 - 5 * i) : null,
    })),
    ...{ createdAt: time.ago(0, 60), changedAt: time.ago(0, 20) },
  };
}

/** Firings she only wrote the meter down of. */
function earlierFirings(
  kilnId: string,
  programmes: Readonly<Record<DemoProgrammeName, Programme>>,
  time: DemoTime,
  newId: () => string,
): FiringRecord[] {
  const firing = (
    daysAgo: number,
    which: "bisque" | "glaze",
    hours: number,
    [before, after]: readonly [kWh: number, kWh: number],
  ): FiringRecord => {
    const [startedAt, shutOffAt, endedAt] = [time.ago(daysAgo), time.ago(daysAgo, -hours * 60), time.ago(daysAgo - 1)];
    return {
      ...{
        id: newId(),
        kilnId,
        loadId: null,
        name: which === "bisque" ? "bisque" : "glaze, cone 6",
        state: "finished",
      },
      programme: JSON.parse(JSON.stringify(programmes[which])) as ProgrammeFile,
      ...{ startedAt, shutOffAt, endedAt, createdAt: startedAt, changedAt: endedAt },
      meterReadings: [
        { at: startedAt, kWh: before },
        { at: endedAt, kWh: after },
      ],
    };
  };
  return [
    firing(58, "bisque", 12.7, [3861.4, 3892.2]),
    firing(54, "glaze", 8.6, [3897.0, 3928.9]),
    firing(49, "bisque", 12.9, [3934.1, 3965.3]),
    firing(44, "glaze", 8.7, [3970.8, 4003.1]),
    firing(37, "bisque", 13.1, [4009.4, 4041.3]),
    firing(31, "glaze", 8.7, [4048.6, 4080.9]),
  ];
}
