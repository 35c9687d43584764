import { expect, test } from "vitest";
import type { CalibrationRecord } from "../../../studio/records/calibration-record.ts";
import type { FiringRecord } from "../../../studio/records/firing-record.ts";
import type { LoadRecord } from "../../../studio/records/load-record.ts";
import { firingsToLearnFrom } from "./firings-to-learn-from.ts";

const firing = (id: string, more: Partial<FiringRecord> = {}) =>
  ({ id, name: id, state: "finished", loadId: "load", programme: {}, startedAt: id, ...more }) as FiringRecord;
const loads = [
  { id: "load", plan: {} },
  { id: "unplanned", plan: null },
] as LoadRecord[];
const calibrations = [{ firingIds: ["a"] }] as unknown as CalibrationRecord[];

test("the newest that nothing was learned from comes first; what is planned or still fires does not count", () => {
  const firings = [
    ...[firing("a"), firing("b"), firing("c", { state: "cooling" })],
    ...[firing("d", { state: "firing" }), firing("e", { state: "planned", startedAt: null })],
  ];
  const { fresh, learned, lastCannot } = firingsToLearnFrom(firings, loads, calibrations);
  expect(fresh.map(({ id }) => id)).toEqual(["c", "b"]);
  expect(learned.map(({ id }) => id)).toEqual(["a"]);
  expect(lastCannot).toBeNull();
});

test("why the last cannot teach is said", () => {
  const cannot = (more: Partial<FiringRecord>) => firingsToLearnFrom([firing("z", more)], loads, []).lastCannot;
  expect(cannot({ loadId: null })).toMatch(/no planned load/);
  expect(cannot({ loadId: "unplanned" })).toMatch(/no planned load/);
  expect(cannot({ programme: null })).toMatch(/no programme/);
  expect(firingsToLearnFrom([], loads, []).lastCannot).toBeNull();
});
