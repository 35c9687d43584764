// A day of firing with five levels: target 20 ms of processor time on one core.
// Yardstick in the same run: the same semi-discretised equations in the general-purpose integrator odex.
// Run: node benchmarks/thermal.ts

import { fire, type SimulatedFiring } from "../src/firing/thermal/fire.ts";
import { HeatSolver } from "../src/firing/thermal/heat-solver.ts";
import { type KilnNetwork, kilnNetwork } from "../src/firing/thermal/kiln-network.ts";
import { evenLoad, programmeOf, referenceKiln } from "../src/firing/thermal/testing/reference-kiln.ts";
import { processorMs } from "./processor-time.ts";
import { firedByOdex } from "./yardsticks/odex-firing.ts";

const LEVELS = 5;
/** Slow enough that the kiln keeps up: then both programs know beforehand when each ramp ends. */
const PROGRAMME = programmeOf([80, 120, 0], [150, 1122, 0], [60, 1222, 15]);
/** odex fires only so long: 75 min at 80 °C/h and 165 at 150. The hotter hours would take it longer still. */
const ODEX_RAMPS = [
  [80, 120],
  [150, 532.5],
] as const;
const ODEX_MIN = 240;
const DAY_MIN = 24 * 60;
const POWER_W = 9000;

/** How far a run is from steps of 3 s: its levels, K, and its energy, kWh. */
export interface Missed {
  readonly levelsK: number;
  readonly kWh: number;
}

export interface ThermalTiming {
  readonly levels: number;
  readonly nodes: number;
  /** Milliseconds of processor time for 24 h, with steps that follow the error and with steps of 60 s. */
  readonly adaptiveMs: number;
  readonly fixedMs: number;
  readonly adaptiveSteps: number;
  /** The same for odex: four hours timed, times six. */
  readonly odexMs: number;
  readonly odexSlopes: number;
  readonly timesFaster: number;
  /** After four hours. */
  readonly early: { readonly adaptive: Missed; readonly fixed: Missed; readonly odex: Missed };
  /** At shut-off. */
  readonly late: { readonly adaptive: Missed; readonly fixed: Missed };
}

function ours(network: KilnNetwork, fixedStepS?: number): SimulatedFiring {
  return fire(network, PROGRAMME, {
    probeZone: network.zoneAt(0.186),
    probeOffsetC: 0,
    powerW: POWER_W,
    startC: 20,
    coolToC: 30,
    ...(fixedStepS === undefined ? {} : { fixedStepS }),
  });
}

interface Mark {
  readonly levelC: readonly number[];
  readonly kWh: number;
}

/** Levels and energy at a minute, by straight lines between steps; power is each step's mean, so the sum is exact at its ends. */
function markAt(firing: SimulatedFiring, minute: number): Mark {
  const i = Math.max(
    1,
    firing.minutes.findIndex((each) => each >= minute - 1e-6),
  );
  const [from, to] = [firing.minutes[i - 1] as number, firing.minutes[i] as number];
  const share = (minute - from) / (to - from);
  let kWh = 0;
  for (let n = 1; n <= i; n++) {
    const minutes = (firing.minutes[n] as number) - (firing.minutes[n - 1] as number);
    kWh += ((firing.watts[n] as number) * minutes * (n === i ? share : 1)) / 60e3;
  }
  return {
    levelC: firing.levelC.map((level) => (level[i - 1] as number) * (1 - share) + (level[i] as number) * share),
    kWh,
  };
}

function missed(found: Mark, fine: Mark): Missed {
  return {
    levelsK: Math.max(...found.levelC.map((each, i) => Math.abs(each - (fine.levelC[i] as number)))),
    kWh: Math.abs(found.kWh - fine.kWh),
  };
}

export function thermalTiming(): ThermalTiming {
  const kiln = referenceKiln({ powerW: POWER_W });
  const network = kilnNetwork(kiln, evenLoad(LEVELS, kiln.depthM, 12));
  const timed = (fixedStepS?: number): { ms: number; firing: SimulatedFiring } => {
    const firing = ours(network, fixedStepS);
    const ms = processorMs(() => ours(network, fixedStepS), 15);
    return { ms: (ms * DAY_MIN) / (firing.minutes.at(-1) as number), firing };
  };
  const [adaptive, fixed, fine] = [timed(), timed(60), ours(network, 3)];
  const before = process.cpuUsage();
  const odex = firedByOdex(network, { ramps: ODEX_RAMPS, probeZone: network.zoneAt(0.186), startC: 20 });
  const used = process.cpuUsage(before);
  const odexMs = ((used.user + used.system) / 1000) * (DAY_MIN / ODEX_MIN);
  const early = markAt(fine, ODEX_MIN);
  const atShutOff = (firing: SimulatedFiring): Mark => markAt(firing, firing.shutOffMin);
  return {
    levels: LEVELS,
    nodes: new HeatSolver(network.network, 20).flat.nodes,
    adaptiveMs: adaptive.ms,
    fixedMs: fixed.ms,
    adaptiveSteps: adaptive.firing.steps,
    odexMs,
    odexSlopes: odex.slopes,
    timesFaster: odexMs / adaptive.ms,
    early: {
      adaptive: missed(markAt(adaptive.firing, ODEX_MIN), early),
      fixed: missed(markAt(fixed.firing, ODEX_MIN), early),
      odex: missed(odex, early),
    },
    late: {
      adaptive: missed(atShutOff(adaptive.firing), atShutOff(fine)),
      fixed: missed(atShutOff(fixed.firing), atShutOff(fine)),
    },
  };
}

if (process.argv[1] === import.meta.filename) {
  const timing = thermalTiming();
  const { early, late } = timing;
  const line = (name: string, ms: number, at4: Missed, at?: Missed): void => {
    const told = ({ levelsK, kWh }: Missed): string => `${levelsK.toFixed(4)} K, ${kWh.toFixed(5)} kWh`;
    const end = at === undefined ? "" : `; at shut-off ${told(at)}`;
    console.log(`  ${name.padEnd(42)} ${ms.toFixed(1).padStart(8)} ms   off after 4 h ${told(at4)}${end}`);
  };
  console.log(`24 h of firing, ${timing.levels} levels, ${timing.nodes} nodes (target 20 ms of processor time)`);
  line(
    `Wareboard, ${timing.adaptiveSteps} steps that follow the error`,
    timing.adaptiveMs,
    early.adaptive,
    late.adaptive,
  );
  line("Wareboard, steps of 60 s", timing.fixedMs, early.fixed, late.fixed);
  line(`odex, ${timing.odexSlopes} slopes in 4 h, times 6`, timing.odexMs, early.odex);
  console.log(`  odex takes ${timing.timesFaster.toFixed(0)} times as long`);
}
