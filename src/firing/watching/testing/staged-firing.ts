import type { Chance } from "../../../measures/seeded-chance.ts";
import type { Programme } from "../../programme/programme.ts";
import { type Demand, HeatSolver } from "../../thermal/heat-solver.ts";
import type { KilnNetwork } from "../../thermal/kiln-network.ts";

/** A firing staged by a controller of its own, another than `fire`'s, so that its faults and ways can be chosen. */
export interface Staging {
  readonly network: KilnNetwork;
  readonly programme: Programme;
  readonly probeZone: number;
  readonly probeOffsetC: number;
  readonly powerW: number;
  readonly startC: number;
  /** Waits for the kiln at the end of a ramp. */
  readonly waits: boolean;
  /** The first ramp begins here, whatever the kiln has: as some controllers do. */
  readonly rampFromC?: number;
  /** What its elements give of their power at a minute: 1 where nothing is wrong. */
  readonly share?: (minute: number) => number;
  /** From this minute on its relay is welded. */
  readonly weldedFromMin?: number;
  /** It is followed no longer than this. */
  readonly untilMin?: number;
  /** It is followed until so cool. */
  readonly coolToC: number;
}

/** What really happened. Arrays share their places; minutes from the start, half a minute apart. */
export interface Staged {
  readonly minutes: Float64Array;
  readonly probeC: Float64Array;
  readonly levelC: readonly Float64Array[];
  readonly shutOffMin: number;
  /** The slowest climb over any 20 min while it lay more than 10 °C behind its programme, as a share of what was asked. */
  readonly slowestShare: number;
}

const STEP_S = 30;
const THERE_C = 0.5;
const BEHIND_C = 10;
/** Steps in twenty minutes. */
const BACK = 40;
const LONGEST_MIN = 4 * 24 * 60;

/** Stages it: the controller asks by its clock, the kiln gives what it can. */
export function staged(staging: Staging): Staged {
  const { network, programme, probeZone, probeOffsetC, powerW, waits } = staging;
  const solver = new HeatSolver(network.network, staging.startC - probeOffsetC);
  const surfaces = network.levelColumns.map((column) => solver.flat.start[column] as number);
  const demand: Demand = { zone: probeZone, steer: true, wantedC: new Float64Array(2), watts: 0, mostWatts: powerW };
  const minutes = [0];
  const probeC = [staging.startC];
  const levelC = surfaces.map((node) => [solver.tempC[node] as number]);
  let minute = 0;
  const probe = (): number => solver.zoneC(probeZone) + probeOffsetC;
  const advance = (wantedC: number | null): void => {
    const share = staging.share?.(minute) ?? 1;
    const welded = minute >= (staging.weldedFromMin ?? Number.POSITIVE_INFINITY);
    demand.steer = wantedC !== null && !welded;
    demand.watts = welded ? powerW * share : 0;
    demand.mostWatts = powerW * share;
    demand.wantedC.fill((wantedC ?? 0) - probeOffsetC);
    solver.step(STEP_S, demand);
    minute += STEP_S / 60;
    minutes.push(minute);
    probeC.push(probe());
    surfaces.forEach((node, level) => {
      (levelC[level] as number[]).push(solver.tempC[node] as number);
    });
  };
  let slowestShare = 1;
  const untilMin = staging.untilMin ?? Number.POSITIVE_INFINITY;
  const compare = (wantedC: number, rateCPerHour: number): void => {
    const back = minutes.length - 1 - BACK;
    if (back < 0 || wantedC - probe() < BEHIND_C) return;
    slowestShare = Math.min(slowestShare, ((probe() - (probeC[back] as number)) * 3) / rateCPerHour);
  };
  let from = staging.rampFromC ?? staging.startC;
  for (const { targetC, rateCPerHour, holdMin } of programme.segments) {
    const rising = targetC >= from;
    if (!rising) solver.settleFired();
    const rampMin = rateCPerHour === null ? 0 : (Math.abs(targetC - from) / rateCPerHour) * 60;
    const begun = minute;
    const short = (): number => (rising ? targetC - probe() : probe() - targetC);
    const mustWait = waits || rateCPerHour === null;
    while (minute < untilMin && (minute - begun < rampMin || (mustWait && short() > THERE_C))) {
      if (minute > LONGEST_MIN) throw new RangeError("this kiln cannot fire this programme");
      const share = rampMin === 0 ? 1 : Math.min(1, (minute - begun + STEP_S / 60) / rampMin);
      const wanted = from + share * (targetC - from);
      advance(rateCPerHour === null && !rising ? targetC : wanted);
      if (rising && rateCPerHour !== null && minute - begun > 20) compare(wanted, rateCPerHour);
    }
    const held = minute;
    while (minute - held < holdMin && minute < untilMin) {
      advance(targetC);
      if (rising && rateCPerHour !== null) compare(targetC, rateCPerHour);
    }
    from = targetC;
  }
  const shutOffMin = minute;
  solver.settleFired();
  while (probe() > staging.coolToC && minute < Math.min(untilMin, LONGEST_MIN)) advance(null);
  return {
    minutes: Float64Array.from(minutes),
    probeC: Float64Array.from(probeC),
    levelC: levelC.map((each) => Float64Array.from(each)),
    shutOffMin,
    slowestShare,
  };
}

export interface Reading {
  readonly minute: number;
  readonly tempC: number;
}

/** What a logger makes of it: every so many minutes, with an error, in whole degrees or finer. */
export function readingsOf(
  firing: Pick<Staged, "minutes" | "probeC">,
  chance: Chance,
  { everyMin = 1, noiseC = 1, stepC = 1, untilMin = Number.POSITIVE_INFINITY } = {},
): Reading[] {
  const readings: Reading[] = [];
  const end = Math.min(untilMin, firing.minutes.at(-1) as number);
  let after = 1;
  for (let i = 0; i * everyMin <= end; i++) {
    const minute = i * everyMin;
    while (after < firing.minutes.length - 1 && (firing.minutes[after] as number) < minute) after++;
    const [from, to] = [firing.minutes[after - 1] as number, firing.minutes[after] as number];
    const [low, high] = [firing.probeC[after - 1] as number, firing.probeC[after] as number];
    const tempC = low + ((minute - from) / (to - from)) * (high - low) + noiseC * normal(chance);
    readings.push({ minute, tempC: Math.round(tempC / stepC) * stepC });
  }
  return readings;
}

/** A draw from the normal distribution, by Box and Muller's method, no further out than three sigmas. */
export function normal(chance: Chance): number {
  for (;;) {
    const draw = Math.sqrt(-2 * Math.log(1 - chance.next())) * Math.cos(2 * Math.PI * chance.next());
    if (Math.abs(draw) <= 3) return draw;
  }
}
