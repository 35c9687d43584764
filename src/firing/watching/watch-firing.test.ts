import { expect, test } from "vitest";
import { seededChance } from "../../measures/seeded-chance.ts";
import { DESCRIBED_KILN, DESCRIBED_LOAD, LOGGED_PROGRAMMES } from "../calibration/testing/hidden-kiln.ts";
import { predict } from "../prediction/predict.ts";
import type { Programme } from "../programme/programme.ts";
import { kilnNetwork } from "../thermal/kiln-network.ts";
import { type Reading, readingsOf, staged } from "./testing/staged-firing.ts";
import { watchFiring } from "./watch-firing.ts";

const PROGRAMME = LOGGED_PROGRAMMES[0] as Programme;
const NETWORK = kilnNetwork(DESCRIBED_KILN, DESCRIBED_LOAD);
const WATCHED = { kiln: DESCRIBED_KILN, load: DESCRIBED_LOAD };
const STAGING = {
  network: NETWORK,
  programme: PROGRAMME,
  probeZone: NETWORK.zoneAt(DESCRIBED_KILN.depthM / 2),
  probeOffsetC: 0,
  powerW: 6600,
  startC: 20,
  waits: true,
  coolToC: 50,
};
const FIRING = staged(STAGING);
const READINGS = readingsOf(FIRING, seededChance(5));

function watched(readings: readonly Reading[], ask: (minute: number) => boolean = () => false) {
  const watch = watchFiring(WATCHED, PROGRAMME, { cone: "6" });
  for (const { minute, tempC } of readings) {
    watch.read(minute, tempC);
    if (ask(minute)) watch.state();
  }
  return watch;
}

test("the same readings again give the same state, however often it was asked meanwhile", () => {
  for (const until of [3, 440, 520]) {
    const readings = READINGS.filter((each) => each.minute <= until);
    const spoilt = readings.flatMap((each) => [each, each, { minute: each.minute - 30, tempC: 12 }]);
    expect(watched([...spoilt, ...readings], (minute) => minute % 97 === 0).state()).toEqual(watched(readings).state());
  }
});

test("before anything was read there is no state to speak of; from the first reading on there is an outlook", () => {
  const watch = watchFiring(WATCHED, PROGRAMME);
  expect(watch.state()).toMatchObject({ minute: null, place: null, heatWork: null, outlook: null, faults: [] });
  watch.read(0, 20);
  const { outlook } = watch.state();
  const foretold = predict({ ...WATCHED, programme: PROGRAMME });
  // Not yet moved by any reading: the prediction itself, in larger steps.
  expect(outlook?.ends?.atMin).toBeCloseTo(foretold.hours * 60, -0.5);
  expect(outlook?.cool.map((each) => each.tempC)).toEqual([200, 120, 95, 50]);
});

test("heat work and cones so far are those of the readings, and of the levels as the kiln makes them; what is past stays", () => {
  const watch = watchFiring(WATCHED, PROGRAMME, { cone: "6" });
  let early = Number.NaN;
  const end = READINGS.at(-1)?.minute as number;
  for (const { minute, tempC } of READINGS) {
    watch.read(minute, tempC);
    if (minute === end - 60) early = watch.state().outlook?.cool[2]?.at?.atMin as number;
  }
  const state = watch.state();
  expect(state.heatWork?.coneDown).toBe("6");
  expect(state.levels).toHaveLength(3);
  for (const level of state.levels) expect(level.ladder).toBeGreaterThan(25);
  expect(state.outlook?.cone?.probe?.atMin).toBeLessThan(FIRING.shutOffMin);
  expect(state.outlook?.ends?.spreadMin).toBe(0);
  const open = state.outlook?.cool[2]?.at?.atMin as number;
  expect(open).toBeLessThan(end - 60);
  expect(Math.abs(open - early)).toBeLessThan(10);
});

test("a probe that cannot be believed gives no outlook; once it can be again, there is one", () => {
  const dead = READINGS.map((each) => (each.minute > 200 && each.minute < 230 ? { ...each, tempC: Number.NaN } : each));
  expect(watched(dead.filter((each) => each.minute <= 215)).state()).toMatchObject({ outlook: null });
  const after = watched(dead.filter((each) => each.minute <= 300)).state();
  expect(after.faults).toMatchObject([{ kind: "dead probe", sinceMin: 201, noticedMin: 202 }]);
  expect(after.faults[0]?.untilMin).toBeLessThanOrEqual(232);
  expect(Math.abs((after.outlook?.ends?.atMin as number) - FIRING.shutOffMin)).toBeLessThan(15);
});

test("shut off by hand: the programme is over, nothing stalls, and cooling is foretold", () => {
  const cut = staged({ ...STAGING, share: (minute) => (minute >= 250 ? 0 : 1), untilMin: 400 });
  const readings = readingsOf(cut, seededChance(2));
  const told = watchFiring(WATCHED, PROGRAMME, { cone: "6" });
  const untold = watchFiring(WATCHED, PROGRAMME, { cone: "6" });
  for (const { minute, tempC } of readings) {
    if (minute === 250) told.shutOff(250);
    told.read(minute, tempC);
    untold.read(minute, tempC);
  }
  expect(told.state().faults).toEqual([]);
  expect(told.state().place?.doing).toBe("over");
  expect(told.state().outlook?.cone?.probe).toBeNull();
  expect(told.state().outlook?.cool[2]?.at?.atMin).toBeGreaterThan(400);
  expect(untold.state().faults.map((each) => each.kind)).toEqual(["stalling"]);
});

test("a cone that is none is refused, with its field", () => {
  expect(() => watchFiring(WATCHED, { ...PROGRAMME, cone: "six and a bit" })).toThrow(/cone/i);
});
