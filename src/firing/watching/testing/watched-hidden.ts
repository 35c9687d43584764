import { seededChance } from "../../../measures/seeded-chance.ts";
import { fireHidden, hiddenKiln, LOGGED_PROGRAMMES, UNSEEN_PROGRAMME } from "../../calibration/testing/hidden-kiln.ts";
import { type ConeName, conePlace } from "../../cones/cone.ts";
import { CONE_TABLE } from "../../cones/cone-table.ts";
import { heatWork } from "../../heat-work/heat-work.ts";
import type { Programme } from "../../programme/programme.ts";
import { type Reading, readingsOf } from "./staged-firing.ts";

/** A firing in a kiln whose unknowns were drawn by chance, by an integration of its own, and what came of it. */
export interface HiddenFiring {
  readonly programme: Programme;
  readonly readings: readonly Reading[];
  readonly cone: ConeName;
  readonly coneAtMin: number;
  /** When probe and ware were under 95 °C for good. */
  readonly openAtMin: number;
}

/** Fires a hidden kiln; a reading a minute unless told. */
export function hiddenFiring(seed: number, logger: Parameters<typeof readingsOf>[2] = {}): HiddenFiring {
  const chance = seededChance(seed);
  const kiln = hiddenKiln(chance);
  const programmes = [...LOGGED_PROGRAMMES, UNSEEN_PROGRAMME];
  const programme = programmes[seed % programmes.length] as Programme;
  const firing = fireHidden(kiln, programme);
  const { minutes, probeC, levelC } = firing;
  // The hottest that is well down, so that it falls before the kiln is off.
  const cone = heatWork({ minutes, tempC: probeC }).cones.findLast((each) => each.work > 1.15) as {
    cone: ConeName;
    downAtMin: number;
  };
  const hottest = (i: number): number => Math.max(probeC[i] as number, ...levelC.map((level) => level[i] as number));
  let i = minutes.length - 1;
  while (hottest(i - 1) <= 95) i--;
  const share = (hottest(i - 1) - 95) / (hottest(i - 1) - hottest(i));
  const openAtMin = (minutes[i - 1] as number) + share * ((minutes[i] as number) - (minutes[i - 1] as number));
  return {
    programme,
    readings: readingsOf(firing, chance, logger),
    cone: cone.cone,
    coneAtMin: cone.downAtMin,
    openAtMin,
  };
}

/** The yardstick: a straight line through the last half hour of readings, to a temperature. Null where it leads away. */
export function byStraightLine(readings: readonly Reading[], nowMin: number, toC: number): number | null {
  const last = readings.filter((each) => each.minute <= nowMin && each.minute >= nowMin - 30);
  const mean = (of: (reading: Reading) => number): number =>
    last.reduce((sum, each) => sum + of(each), 0) / last.length;
  const [middleMin, middleC] = [mean((each) => each.minute), mean((each) => each.tempC)];
  let [rise, run] = [0, 0];
  for (const { minute, tempC } of last) {
    rise += (minute - middleMin) * (tempC - middleC);
    run += (minute - middleMin) ** 2;
  }
  const atMin = middleMin + ((toC - middleC) * run) / rise;
  return atMin > nowMin ? atMin : null;
}

/** Where a straight line looks for a cone: its temperature at a steady 60 °C/h. */
export const coneC = (cone: ConeName): number => (CONE_TABLE[conePlace(cone)] as (typeof CONE_TABLE)[number]).at60C;

export const rootMeanSquare = (values: readonly number[]): number =>
  Math.sqrt(values.reduce((sum, each) => sum + each * each, 0) / values.length);
