import type { Curve } from "../heat-work/curve.ts";
import type { Programme } from "../programme/programme.ts";
import type { ThermalKiln, ThermalLevel } from "../thermal/kiln-network.ts";
import { simulate } from "./predict.ts";

// An eight-sided kiln of 57 litres, 390 mm across and 452 mm deep, behind 64 mm of brick (small kiln ratings: common
// practice, no source), with more power than any, so that it follows every climb: what counts here is how it cools.
const ACROSS_M = 0.39;
const EIGHTH = Math.tan(Math.PI / 8);
const USUAL_KILN: ThermalKiln = {
  floorAreaM2: 2 * EIGHTH * ACROSS_M ** 2,
  wallRoundM: 8 * EIGHTH * ACROSS_M,
  depthM: 0.452,
  wall: [{ material: "brick 23", thicknessM: 0.064 }],
  powerW: 12_000,
  leakWattsPerK: 0.5,
  bandShares: [1],
  wallFactor: 1,
  roomC: 20,
};

/** Four levels of three kilograms each: the 12 kg of the same reports. */
const LEVELS: readonly ThermalLevel[] = [0.041, 0.14, 0.24, 0.34].map((shelfTopM) => ({
  shelfTopM,
  shelfThicknessM: 0.016,
  shelfAreaM2: 0.0962,
  openAreaM2: 0.03,
  wareKg: 3,
  wareThicknessM: 0.006,
  postsKg: 0.5,
}));

/**
 * What a usual small kiln with a usual load and power to spare makes of a programme, at its probe: for aiming a programme
 * where nothing is known of the kiln. A kiln of light brick falls fast at first, so its cooling adds less heat work than
 * even cooling would.
 */
export function usualKilnCurve(programme: Programme): Curve {
  const green = programme.kind === "bisque" || programme.kind === "once-fired";
  const { minutes, probeC } = simulate({ kiln: USUAL_KILN, load: { levels: LEVELS, green, massFactor: 1 }, programme });
  return { minutes, tempC: probeC };
}
