import { bendDeg } from "../heat-work/bend.ts";
import { heatWork } from "../heat-work/heat-work.ts";
import { degreesBeyond, equivalentC } from "../heat-work/ladder-position.ts";
import { whereReached, workOf } from "../heat-work/questions.ts";
import { type CheckedCone, type EvidenceKind, NOISE } from "./evidence.ts";
import type { MeasuredFiring } from "./measured-firing.ts";
import type { Replay } from "./replay.ts";

/** One comparison: how far the replay is above what was measured, in its own unit and in sigmas free of one another. */
export interface Comparison {
  readonly kind: EvidenceKind;
  readonly apart: number;
  readonly inSigmas: number;
}

const LEAST_WORK = 1e-6;
/** A cone bent less than this may have had no heat work at all; bent more than the other, any amount. */
const UPRIGHT_DEG = 12;
const FLAT_DEG = 88;

/** Compares a replay with all that was measured. The same comparisons in the same order for every kiln. */
export function compare(firing: MeasuredFiring, replayed: Replay, powerW: number): Comparison[] {
  const comparisons = temperatures(firing, replayed);
  for (const reading of firing.power) {
    const watts = meanWatts(firing, replayed, reading.fromMin, reading.toMin);
    const apart = "shareOn" in reading ? watts / powerW - reading.shareOn : (watts - reading.powerW) / powerW;
    comparisons.push({ kind: "power", apart: apart * 100, inSigmas: apart / NOISE.powerShare });
  }
  comparisons.push(...cones(firing, replayed));
  if (firing.kWh !== null) {
    const apart = replayed.kWh - firing.kWh;
    comparisons.push({ kind: "meter", apart, inSigmas: apart / NOISE.meterKWh });
  }
  return comparisons;
}

/** While it is steered, a replay is apart from the log only where it is too weak; and a log's own errors ask too much. */
const STEERED_SLACK_C = 2 * NOISE.tempC;

/**
 * Temperatures whose errors last: each is compared with what the one before it lets expect. While steered, only what is
 * beyond the log's errors counts: they are followed down but not up where the kiln gives all it has, which would make
 * it seem stronger than it is.
 */
function temperatures({ minutes, tempC, modes, compared }: MeasuredFiring, { probeC }: Replay): Comparison[] {
  let before = 0;
  let beforeMin = 0;
  return compared.map(({ at, first }) => {
    const whole = (probeC[at] as number) - (tempC[at] as number);
    const steered = modes[at] === "follow";
    const apart = steered ? Math.sign(whole) * Math.max(0, Math.abs(whole) - STEERED_SLACK_C) : whole;
    const minute = minutes[at] as number;
    const kept = first ? 0 : Math.exp((beforeMin - minute) / NOISE.tempLastsMin);
    const inSigmas = (apart - kept * before) / (NOISE.tempC * Math.sqrt(1 - kept * kept));
    before = apart;
    beforeMin = minute;
    const kind = modes[at] === "off" ? "cooling" : modes[at] === "full" ? "full power" : "temperature";
    return { kind, apart, inSigmas };
  });
}

/** Cones of one firing err together too, by what the log does near its peak: their mean is less sure than it seems. */
function cones(firing: MeasuredFiring, { levelC }: Replay): Comparison[] {
  const all = firing.cones.map((cone) =>
    coneApart(cone, { minutes: firing.minutes, tempC: levelC[cone.level] as Float64Array }),
  );
  const mean = all.reduce((sum, apart) => sum + apart, 0) / all.length;
  const meanSigmas = mean / Math.hypot(NOISE.coneC, Math.sqrt(all.length) * NOISE.conesTogetherC);
  return all.map((apart) => ({ kind: "cones", apart, inSigmas: (apart - mean) / NOISE.coneC + meanSigmas }));
}

function meanWatts({ minutes }: MeasuredFiring, { watts }: Replay, fromMin: number, toMin: number): number {
  let sum = 0;
  for (let at = 1; at < minutes.length; at++) {
    const shared = Math.min(toMin, minutes[at] as number) - Math.max(fromMin, minutes[at - 1] as number);
    if (shared > 0) sum += shared * (watts[at] as number);
  }
  return sum / (toMin - fromMin);
}

/** By how many °C of heat work the replay gave a cone's shelf more than the cone shows. */
function coneApart(cone: CheckedCone, curve: { minutes: Float64Array; tempC: Float64Array }): number {
  if ("ladder" in cone) return heatWork(curve).equivalentC - equivalentC(cone.ladder);
  const got = degreesBeyond(cone.cone, Math.max(LEAST_WORK, workOf(cone.cone, curve)));
  const shown = degreesBeyond(cone.cone, workOfBend(Math.min(FLAT_DEG, Math.max(UPRIGHT_DEG, cone.bendDeg))));
  if (cone.bendDeg > FLAT_DEG) return Math.min(0, got);
  return cone.bendDeg < UPRIGHT_DEG ? Math.max(0, got - shown) : got - shown;
}

/** The work that bends a cone so far. */
const workOfBend = (degrees: number): number => whereReached(bendDeg, degrees, 0, 1, 1e-7) ?? 1;
