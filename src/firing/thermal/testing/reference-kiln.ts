import type { Programme, Segment } from "../../programme/programme.ts";
import type { ThermalKiln, ThermalLevel, ThermalLoad } from "../kiln-network.ts";

/** A programme of ramps and holds, to try: [°C/h or null, °C, minutes of hold]. */
export function programmeOf(...segments: readonly (readonly [number | null, number, number])[]): Programme {
  return {
    format: "programme/1",
    name: "trial",
    segments: segments.map(([rateCPerHour, targetC, holdMin]): Segment => ({ rateCPerHour, targetC, holdMin })),
  };
}

/** 80 °C/h through boiling, 220 °C/h to where the last hundred begin, 60 °C/h to cone 6: the case the design names. */
export const CONE_6_PROGRAMME = programmeOf([80, 120, 0], [220, 1122, 0], [60, 1222, 0]);

/** An octagonal kiln of brick: inside 430 mm across flats, so 0.153 m² of floor; 57 L are 372 mm deep. */
export function referenceKiln(changes: Partial<ThermalKiln> = {}): ThermalKiln {
  return {
    floorAreaM2: 0.1532,
    wallRoundM: 1.425,
    depthM: 0.372,
    wall: [{ material: "brick 23", thicknessM: 0.064 }],
    powerW: 5500,
    leakWattsPerK: 0.5,
    bandShares: [1],
    wallFactor: 1,
    roomC: 20,
    ...changes,
  };
}

/**
 * A load on even levels of 390 mm shelves, 16 mm thick.
 *
 * @param wareKg all ware together, kg, shared evenly
 */
export function evenLoad(levels: number, depthM: number, wareKg: number, changes: Partial<ThermalLoad> = {}) {
  const first = 0.041;
  const level = (i: number): ThermalLevel => ({
    shelfTopM: first + (i * (depthM - first)) / levels,
    shelfThicknessM: 0.016,
    shelfAreaM2: 0.1195,
    openAreaM2: 0.0337,
    wareKg: wareKg / levels,
    wareThicknessM: 0.006,
    postsKg: 0.5,
  });
  return {
    levels: Array.from({ length: levels }, (_, i) => level(i)),
    green: false,
    massFactor: 1,
    ...changes,
  } satisfies ThermalLoad;
}
