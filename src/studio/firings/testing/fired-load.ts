import type { Placement } from "../../../loading/load-plan.ts";
import type { Outcome } from "../../records/firing-parts.ts";
import type { FiringRecord } from "../../records/firing-record.ts";
import type { LoadRecord } from "../../records/load-record.ts";

const at = (ware: string, xMm: number, yMm = 0): Placement => ({ ware, xMm, yMm, turnDeg: 0 });

const MOMENT = "2026-11-20T08:30:00.000Z";
const LATER = "2026-11-21T17:05:09.250Z";
const stamps = { createdAt: MOMENT, changedAt: MOMENT };
const kiln: LoadRecord["request"]["kiln"] = {
  name: "back room",
  chamber: { shape: "polygon", sides: 8, acrossFlatsMm: 430, depthMm: 460 },
  probes: [{ name: "thermocouple", angleDeg: 60, heightMm: 200, reachMm: 25 }],
};
const furniture: LoadRecord["request"]["furniture"] = {
  shelves: [{ name: "full", shape: "disc", diameterMm: 390, thicknessMm: 16, count: 4 }],
  posts: [{ heightMm: 100, widthMm: 35, shape: "square", count: 6 }],
};

/** Two levels in an eight-sided kiln (430 mm across, 460 deep): two cups a millimetre apart and a plate; one tall vase. */
export function firedLoad(): LoadRecord {
  const level = (topMm: number, ...placements: Placement[]) => ({
    ...{ shelf: "full", topMm, xMm: 0, yMm: 0, turnDeg: 0, posts: [] },
    placements,
  });
  return {
    ...{ id: "fired", kilnId: "kiln-1", name: "before the market", version: 1, ...stamps },
    request: {
      format: "load-request/1",
      ...{ kiln, furniture },
      ware: [
        { name: "cup", count: 2, diameterMm: 80, heightMm: 90, glaze: "moss" },
        { name: "plate", count: 1, diameterMm: 160, heightMm: 20 },
        { name: "vase", count: 1, diameterMm: 100, heightMm: 200, form: "vase" },
      ],
      rules: { gapMm: 6, headroomMm: 6 },
    },
    plan: {
      format: "load-plan/1",
      levels: [level(41, at("cup", -150), at("cup", -69), at("plate", 100)), level(200, at("vase", 0))],
      left: [],
    },
    ...{ pins: [], ticks: [], takenBack: [], state: "fired", sources: [{ ware: "cup", wareId: "cups" }] },
  };
}

/** Its firing: foretold to cone 6 on both levels alike, eight hours, thirty kilowatt-hours. */
export const firedFiring = (changes: Partial<FiringRecord> = {}): FiringRecord => ({
  ...{ id: "f", kilnId: "kiln-1", loadId: "fired", name: "glaze, slow", state: "finished", ...stamps },
  programme: {
    ...{ format: "programme/1", name: "six", kind: "glaze", cone: "6" },
    segments: [{ rateCPerHour: 150, targetC: 1222, holdMin: 0 }],
  },
  ...{ startedAt: "2026-11-20T20:00:00.000Z", shutOffAt: "2026-11-21T04:00:00.000Z" },
  endedAt: "2026-11-21T18:00:00.000Z",
  meterReadings: [
    { at: "2026-11-20T20:00:00.000Z", kWh: 1000 },
    { at: "2026-11-21T04:00:00.000Z", kWh: 1030 },
  ],
  foretold: {
    ...{
      hours: 8,
      kWh: 28,
      peakC: 1222,
      cone: "6",
      cost: null,
      curve: [
        [0, 20],
        [480, 1222],
        [1200, 95],
      ],
    },
    levels: [0, 1].map((level) => ({ level, peakC: 1222, ladder: 27, offsetC: 0 })),
    coolHours: { "95": 12 },
    kWhEachHour: [3.5, 3.5, 3.5, 3.5, 3.5, 3.5, 3.5, 3.5],
  },
  ...{ cones: [], outcomes: [], notices: [] },
  ...changes,
});

/** How one of its pieces came out. */
export const outcome = (level: number, placement: number, more: Partial<Outcome> = {}): Outcome => ({
  ...{ level, placement, grade: "good", faults: [], note: "", at: LATER },
  ...more,
});
