import type { Chance } from "../../../measures/seeded-chance.ts";
import { AT_REST, withValues } from "../../calibration/parameters.ts";
import { DESCRIBED_KILN, DESCRIBED_LOAD, LOGGED_PROGRAMMES } from "../../calibration/testing/hidden-kiln.ts";
import { PROGRAMME_FORMAT, type Programme } from "../../programme/programme.ts";
import { kilnNetwork } from "../../thermal/kiln-network.ts";
import { normal, type Staged, type Staging, staged } from "./staged-firing.ts";

const programme = (
  kind: Programme["kind"],
  name: string,
  rows: readonly (readonly [number | null, number, number])[],
): Programme => ({
  format: PROGRAMME_FORMAT,
  name,
  ...(kind === undefined ? {} : { kind }),
  segments: rows.map(([rateCPerHour, targetC, holdMin]) => ({ rateCPerHour, targetC, holdMin })),
});

/** Firings of every kind and pace: glaze, bisque, candled over night, slowly cooled, full power, once-fired, lustre. */
export const PROGRAMMES: readonly Programme[] = [
  ...LOGGED_PROGRAMMES,
  programme("bisque", "candled bisque", [
    [40, 95, 240],
    [100, 600, 0],
    [150, 980, 0],
    [60, 1040, 0],
  ]),
  programme("glaze", "slow cooled glaze", [
    [150, 1100, 0],
    [60, 1210, 15],
    [null, 1080, 30],
    [50, 850, 0],
  ]),
  programme("glaze", "as fast as it can to red heat", [
    [null, 600, 0],
    [150, 1120, 0],
    [60, 1200, 5],
  ]),
  programme("once-fired", "once-fired", [
    [25, 120, 60],
    [70, 600, 0],
    [150, 1100, 0],
    [50, 1180, 20],
  ]),
  programme("lustre", "lustre", [
    [90, 450, 15],
    [150, 735, 10],
  ]),
];

export interface QuietFiring {
  readonly staging: Staging;
  readonly firing: Staged;
}

/**
 * A firing in which nothing is wrong: a kiln drawn by chance that climbs at no less than three fifths of what it is asked (one
 * that does not is stalling), with its controller's way, from cold or warm.
 */
export function quietFiring(chance: Chance): QuietFiring {
  for (;;) {
    const factor = (sigma: number): number => Math.exp(sigma * normal(chance));
    const { kiln, load } = withValues(
      DESCRIBED_KILN,
      { ...DESCRIBED_LOAD, green: chance.next() < 0.3 },
      { ...AT_REST, powerFactor: 1.1 * factor(0.12), wallFactor: factor(0.25), wareMassFactor: factor(0.3) },
    );
    const network = kilnNetwork(kiln, load);
    const startC = chance.next() < 0.7 ? 20 : 30 + 90 * chance.next();
    const fired = PROGRAMMES[chance.below(PROGRAMMES.length)] as Programme;
    const first = (fired.segments[0] as Programme["segments"][number]).targetC;
    const staging: Staging = {
      network,
      programme: fired,
      probeZone: network.zoneAt(DESCRIBED_KILN.depthM / 2),
      probeOffsetC: 5 * normal(chance),
      powerW: kiln.powerW,
      startC: Math.min(startC, first - 20),
      waits: chance.next() < 0.6,
      ...(chance.next() < 0.3 ? { rampFromC: 20 } : {}),
      coolToC: 60,
    };
    try {
      const firing = staged(staging);
      if (firing.slowestShare >= 0.6) return { staging, firing };
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
    }
  }
}
