import { seededChance } from "../../../measures/seeded-chance.ts";
import { calibrate, calibrated } from "../calibrate.ts";
import type { Calibration } from "../calibration.ts";
import type { FiringEvidence } from "../evidence.ts";
import { foretell, foretoldOf } from "../foretold.ts";
import { PARAMETERS, type ParameterName, type ParameterValues } from "../parameters.ts";
import {
  DESCRIBED_KILN,
  DESCRIBED_LOAD,
  evidenceOf,
  fireHidden,
  hiddenKiln,
  LOGGED_PROGRAMMES,
  UNSEEN_PROGRAMME,
} from "./hidden-kiln.ts";

/** How a calibration did on a kiln it had not seen, in a firing that it was not fitted to. */
export interface Recovery {
  readonly seed: number;
  readonly calibration: Calibration;
  readonly hidden: ParameterValues;
  readonly kWhPercent: number;
  readonly shelvesC: readonly number[];
  readonly coolPercent: number;
  /** How far each parameter is off, in its own posterior sigmas. */
  readonly offInSigmas: Readonly<Record<ParameterName, number>>;
}

/**
 * Hides a kiln, logs some firings of it with all their errors, calibrates, and foretells another programme.
 *
 * @param seed of all chance in it
 * @param firings how many of the logged programmes are known, 1 to 3
 * @param fullPower whether its owner knows when the elements were on all the time, or only what programme was run
 */
export function recover(
  seed: number,
  firings = LOGGED_PROGRAMMES.length,
  fullPower: "known" | "from the programme" = "known",
): Recovery {
  const chance = seededChance(seed);
  const hidden = hiddenKiln(chance);
  const evidence = LOGGED_PROGRAMMES.slice(0, firings).map((programme): FiringEvidence => {
    const { fullPower: stretches, ...rest } = evidenceOf(hidden, fireHidden(hidden, programme), chance);
    return { ...rest, ...(fullPower === "known" ? { fullPower: stretches } : { programme }) };
  });
  const calibration = calibrate({ kiln: DESCRIBED_KILN, load: DESCRIBED_LOAD, programme: UNSEEN_PROGRAMME, evidence });
  const truth = foretoldOf(fireHidden(hidden, UNSEEN_PROGRAMME));
  const setting = calibrated(DESCRIBED_KILN, DESCRIBED_LOAD, calibration);
  const foretold = foretell(setting, UNSEEN_PROGRAMME, DESCRIBED_KILN.depthM / 2);
  const off = calibration.parameters.map(({ name, value, sigma }, i) => {
    const there = hidden.values[name];
    const apart = PARAMETERS[i]?.kind === "factor" ? Math.log(value / there) : value - there;
    return [name, apart / sigma] as const;
  });
  return {
    seed,
    calibration,
    hidden: hidden.values,
    kWhPercent: 100 * (foretold.kWh / truth.kWh - 1),
    shelvesC: foretold.shelvesC.map((each, i) => each - (truth.shelvesC[i] as number)),
    coolPercent: 100 * (foretold.coolHours / truth.coolHours - 1),
    offInSigmas: Object.fromEntries(off) as Record<ParameterName, number>,
  };
}

export const worstOf = (values: readonly number[]): number => Math.max(...values.map(Math.abs));
