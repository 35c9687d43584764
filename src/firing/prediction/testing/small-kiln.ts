import type { Programme } from "../../programme/programme.ts";
import type { ThermalKiln, ThermalLevel, ThermalLoad } from "../../thermal/kiln-network.ts";

/** An invented kiln of 57 litres, for tests. */
export const SMALL_KILN: ThermalKiln = {
  floorAreaM2: 0.14,
  wallRoundM: 1.36,
  depthM: 0.41,
  wall: [{ material: "brick 23", thicknessM: 0.064 }],
  powerW: 6000,
  leakWattsPerK: 0.5,
  bandShares: [1, 1, 1],
  wallFactor: 1,
  roomC: 20,
};

export const levelAt = (shelfTopM: number, wareKg: number): ThermalLevel => ({
  shelfTopM,
  shelfThicknessM: 0.016,
  shelfAreaM2: 0.11,
  openAreaM2: 0.03,
  wareKg,
  wareThicknessM: 0.006,
  postsKg: 0.6,
});

export const SMALL_LOAD: ThermalLoad = {
  levels: [levelAt(0.04, 4), levelAt(0.16, 4), levelAt(0.29, 4)],
  green: false,
  massFactor: 1,
};

/** A climb to a peak, its last stretch at 60 °C/h. */
export const climbTo = (peakC: number, holdMin = 0): Programme => ({
  format: "programme/1",
  name: `to ${peakC} °C`,
  segments: [
    { rateCPerHour: 150, targetC: 1100, holdMin: 0 },
    { rateCPerHour: 60, targetC: peakC, holdMin },
  ],
});
