import { conePlace } from "../../src/firing/cones/cone.ts";
import { CONE_TABLE } from "../../src/firing/cones/cone-table.ts";
import type { Programme } from "../../src/firing/programme/programme.ts";
import { fire, type SimulatedFiring } from "../../src/firing/thermal/fire.ts";
import { kilnNetwork } from "../../src/firing/thermal/kiln-network.ts";
import {
  CONE_6_PROGRAMME,
  evenLoad,
  programmeOf,
  referenceKiln,
} from "../../src/firing/thermal/testing/reference-kiln.ts";

/** The design's case: 57 L, 64 mm brick, 5.5 kW, 12 kg of ware on three shelves, to cone 6, cooled to 95 °C. */
export function referenceFiring(wallFactor = 1): SimulatedFiring {
  const kiln = referenceKiln({ wallFactor });
  const network = kilnNetwork(kiln, evenLoad(3, kiln.depthM, 12));
  return fire(network, CONE_6_PROGRAMME, {
    probeZone: network.zoneAt(kiln.depthM / 2),
    probeOffsetC: 0,
    powerW: kiln.powerW,
    startC: kiln.roomC,
    coolToC: 95,
  });
}

/** Hours from shut-off until everything is under 95 °C. */
export const coolingHours = (firing: SimulatedFiring): number =>
  ((firing.minutes.at(-1) as number) - firing.shutOffMin) / 60;

/** A firing whose energy somebody read off a meter: what is known, and what has to be assumed. */
export interface MeteredCase {
  readonly name: string;
  readonly kWh: readonly [number, number];
  readonly programme: Programme;
  readonly hours: number;
}

const endC = (cone: "06" | "9"): number => (CONE_TABLE[conePlace(cone)] as (typeof CONE_TABLE)[number]).at60C;

/** Through boiling, up to a hundred degrees short, then 60 °C/h: the middle rate chosen so that the whole takes `hours`. */
function toCone(topC: number, firstRate: number, hours: number): Programme {
  const middle = (topC - 100 - 120) / (hours - 100 / firstRate - 100 / 60);
  return programmeOf([firstRate, 120, 0], [middle, topC - 100, 0], [60, topC, 0]);
}

/**
 * A 2.6 ft³ (74 L) kiln with 76 mm of brick, reported with its meter's readings on a potters' mailing list, 21 July 2001.
 * The report gives 10 h for cone 06 and only "faster" for cone 9: 8 h are assumed.
 */
export const METERED: readonly MeteredCase[] = [
  { name: "cone 06, 10 h", kWh: [26, 29], programme: toCone(endC("06"), 80, 10), hours: 10 },
  { name: "cone 9, 8 h assumed", kWh: [34, 36], programme: toCone(endC("9"), 100, 8), hours: 8 },
];

export type AssumedLoad = "18 kg in all" | "18 kg of ware, shelves besides";

/**
 * kWh of a metered case in our model. Assumed: octagonal, 460 mm across flats by 420 mm; three 390 mm shelves; 12 kW, so that
 * it keeps up; walls' conductivity times `wallFactor`. "18 kg in all" counts 14.1 kg of shelves and posts in the 18.
 */
export function meteredKWh(metered: MeteredCase, load: AssumedLoad, wallFactor: number): number {
  const kiln = referenceKiln({
    floorAreaM2: 0.1753,
    wallRoundM: 1.524,
    depthM: 0.42,
    wall: [{ material: "brick 23", thicknessM: 0.076 }],
    powerW: 12_000,
    wallFactor,
  });
  const wareKg = load === "18 kg in all" ? 18 - 3 * (0.1195 * 0.016 * 2100 + 0.5) : 18;
  const network = kilnNetwork(kiln, evenLoad(3, kiln.depthM, wareKg));
  const firing = fire(network, metered.programme, {
    probeZone: network.zoneAt(kiln.depthM / 2),
    probeOffsetC: 0,
    powerW: kiln.powerW,
    startC: kiln.roomC,
    coolToC: 900,
  });
  if (Math.abs(firing.shutOffMin / 60 - metered.hours) > 0.1) throw new Error(`${metered.name}: the kiln fell behind`);
  return firing.kWh;
}

/** The wall factor at which the model gives the middle of what the meter showed. */
export function factorNeeded(metered: MeteredCase, load: AssumedLoad): number {
  const wanted = (metered.kWh[0] + metered.kWh[1]) / 2;
  let [low, high] = [0.2, 2];
  for (let i = 0; i < 14; i++) {
    const middle = (low + high) / 2;
    if (meteredKWh(metered, load, middle) > wanted) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}
