import { expect, test } from "vitest";
import { seededChance } from "../../measures/seeded-chance.ts";
import type { Fault } from "./fault.ts";
import { quietFiring } from "./testing/quiet-kilns.ts";
import { type Reading, readingsOf } from "./testing/staged-firing.ts";
import { watchReadings } from "./testing/watched-readings.ts";

/** How often a logger reads, how noisy, how fine. */
const LOGGERS = [
  { everyMin: 1, noiseC: 1, stepC: 1 },
  { everyMin: 5, noiseC: 3, stepC: 1 },
  { everyMin: 0.25, noiseC: 3, stepC: 0.1 },
  { everyMin: 2, noiseC: 0, stepC: 1 },
];

const told = (faults: readonly Fault[]): string[] =>
  faults.map((each) => `${each.kind} at ${each.noticedMin}: ${each.found}`);

test("over a hundred quiet firings of every kind, pace, strength and controller there is no false fault", () => {
  const false_: string[] = [];
  let fastestFall = 0;
  let slowest = 1;
  let readings = 0;
  for (let seed = 1; seed <= 100; seed++) {
    const chance = seededChance(seed);
    const { staging, firing } = quietFiring(chance);
    const logged = readingsOf(firing, chance, LOGGERS[seed % LOGGERS.length]);
    const { faults } = watchReadings(staging.programme.segments, logged);
    false_.push(...told(faults).map((each) => `seed ${seed}, ${staging.programme.name}: ${each}`));
    slowest = Math.min(slowest, firing.slowestShare);
    readings += logged.length;
    for (let i = 1; i < firing.minutes.length; i++) {
      fastestFall = Math.max(fastestFall, 2 * ((firing.probeC[i - 1] as number) - (firing.probeC[i] as number)));
    }
  }
  console.log(
    `100 quiet firings, ${readings} readings: fastest fall ${fastestFall.toFixed(0)} °C/min, slowest climb behind its programme ${(100 * slowest).toFixed(0)} % of what was asked`,
  );
  expect(false_).toEqual([]);
});

test("a reading a second, some twice, some late, some bundled: no false fault", () => {
  const chance = seededChance(7);
  const { staging, firing } = quietFiring(chance);
  const every = readingsOf(firing, chance, { everyMin: 1 / 60, noiseC: 2, stepC: 1 });
  const shuffled: Reading[] = [];
  for (const [i, reading] of every.entries()) {
    shuffled.push(reading);
    if (i % 50 === 0) shuffled.push(reading);
    if (i % 777 === 0 && i > 600) shuffled.push(every[i - 300] as Reading);
  }
  expect(told(watchReadings(staging.programme.segments, shuffled).faults)).toEqual([]);
});

test("what comes late or twice changes nothing", () => {
  const chance = seededChance(3);
  const { staging, firing } = quietFiring(chance);
  const plain = readingsOf(firing, chance);
  const at = Math.floor(plain.length / 3);
  const spoilt = plain.map((each, i) => (i >= at ? { ...each, tempC: each.tempC + 300 } : each));
  const late = spoilt.flatMap((each, i) => [each, each, ...(i > 5 ? [{ minute: each.minute - 4.5, tempC: 5 }] : [])]);
  expect(watchReadings(staging.programme.segments, late).faults).toEqual(
    watchReadings(staging.programme.segments, spoilt).faults,
  );
  expect(watchReadings(staging.programme.segments, late).faults.length).toBeGreaterThan(0);
});
