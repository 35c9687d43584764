// Watching a firing: how far off the estimates are as it goes on, beside a straight line through the last half hour
// (the yardstick, in the same run); false faults over many quiet firings; what a reading and an outlook cost.
// Run: node benchmarks/watching.ts [kilns, 20] [quiet firings, 300]

import { DESCRIBED_KILN, LOGGED_PROGRAMMES } from "../src/firing/calibration/testing/hidden-kiln.ts";
import { evenLoad } from "../src/firing/thermal/testing/reference-kiln.ts";
import { quietFiring } from "../src/firing/watching/testing/quiet-kilns.ts";
import { readingsOf } from "../src/firing/watching/testing/staged-firing.ts";
import { MARKS, type Miss, missesOf } from "../src/firing/watching/testing/watch-accuracy.ts";
import { hiddenFiring, rootMeanSquare } from "../src/firing/watching/testing/watched-hidden.ts";
import { watchReadings } from "../src/firing/watching/testing/watched-readings.ts";
import { watchFiring } from "../src/firing/watching/watch-firing.ts";
import { seededChance } from "../src/measures/seeded-chance.ts";

const LOGGERS = [
  { everyMin: 1, noiseC: 1, stepC: 1 },
  { everyMin: 5, noiseC: 3, stepC: 1 },
  { everyMin: 0.25, noiseC: 3, stepC: 0.1 },
  { everyMin: 2, noiseC: 0, stepC: 1 },
  { everyMin: 0.5, noiseC: 2, stepC: 1 },
];

function accuracy(kilns: number): void {
  const all: Miss[] = [];
  for (let seed = 1; seed <= kilns; seed++) all.push(...missesOf(hiddenFiring(100 + seed, LOGGERS[seed % 2])));
  console.log(`${kilns} kilns with hidden parameters, watched as their owner described them; minutes off`);
  for (const what of ["cone", "opening"] as const) {
    for (const mark of MARKS) {
      const these = all.filter((each) => each.what === what && each.mark === mark);
      const model = these.flatMap((each) => (each.byModel === null ? [] : [each.byModel]));
      const line = these.flatMap((each) => (each.byLine === null ? [] : [each.byLine]));
      const sigmas = these.flatMap((each) => (each.inSigmas === null ? [] : [each.inSigmas]));
      const told = (of: readonly number[]): string =>
        of.length === 0
          ? "says nothing"
          : `rms ${rootMeanSquare(of).toFixed(1).padStart(6)}, worst ${Math.max(...of.map(Math.abs))
              .toFixed(0)
              .padStart(4)}`;
      const silent = these.length - model.length;
      console.log(
        `  ${what.padEnd(8)} ${String(100 * mark).padStart(3)} %   watch ${told(model)}, ${rootMeanSquare(sigmas).toFixed(1)} spreads${silent > 0 ? `, ${silent} without` : ""}   straight line ${told(line)}`,
      );
    }
  }
}

function quiet(firings: number): void {
  let readings = 0;
  const faults: string[] = [];
  const before = process.cpuUsage();
  for (let seed = 1; seed <= firings; seed++) {
    const chance = seededChance(10_000 + seed);
    const { staging, firing } = quietFiring(chance);
    const logged = readingsOf(firing, chance, LOGGERS[seed % LOGGERS.length]);
    readings += logged.length;
    const found = watchReadings(staging.programme.segments, logged).faults;
    faults.push(...found.map((each) => `seed ${seed}, ${staging.programme.name}: ${each.kind}, ${each.found}`));
  }
  const used = process.cpuUsage(before);
  console.log(
    `${firings} quiet firings, ${readings} readings, ${((used.user + used.system) / 1e6).toFixed(1)} s with their staging: ${faults.length} false faults (target 0)`,
  );
  for (const each of faults) console.log(`  ${each}`);
}

function cost(): void {
  const { readings } = hiddenFiring(4);
  const programme = LOGGED_PROGRAMMES[0] as (typeof LOGGED_PROGRAMMES)[number];
  const load = evenLoad(5, DESCRIBED_KILN.depthM, 12);
  for (const round of ["warming up", "measured"]) {
    const watch = watchFiring({ kiln: DESCRIBED_KILN, load }, programme, { cone: "6" });
    const asked: number[] = [];
    let reading = 0;
    let longest = 0;
    for (const { minute, tempC } of readings) {
      const [first, then] = [process.cpuUsage(), minute % 20 === 0];
      watch.read(minute, tempC);
      const read = process.cpuUsage(first);
      reading += read.user + read.system;
      longest = Math.max(longest, read.user + read.system);
      if (!then) continue;
      const second = process.cpuUsage();
      watch.state();
      const state = process.cpuUsage(second);
      asked.push((state.user + state.system) / 1000);
    }
    if (round === "warming up") continue;
    asked.sort((a, b) => a - b);
    console.log(
      `5 levels, 9 kilns: a reading ${(reading / readings.length / 1000).toFixed(2)} ms (longest ${(longest / 1000).toFixed(0)}, when the bank moves); a state with its outlook ${(asked[asked.length >> 1] as number).toFixed(0)} ms, longest ${(asked.at(-1) as number).toFixed(0)} (target 50)`,
    );
  }
}

if (process.argv[1] === import.meta.filename) {
  accuracy(Number(process.argv[2] ?? 20));
  quiet(Number(process.argv[3] ?? 300));
  cost();
}
