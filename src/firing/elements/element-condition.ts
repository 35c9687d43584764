import { BadInput } from "../../measures/bad-input.ts";
import { resistanceFactor } from "./element-wire.ts";

/** One circuit of elements, measured cold with the kiln cut off from its supply. */
export interface ElementCircuit {
  readonly name: string;
  /** When new, Ω. */
  readonly newOhms: number;
  /** Now, Ω; null where the meter shows no path: a broken wire or a loose end. */
  readonly measuredOhms: number | null;
  /** Across this circuit while it fires, V. */
  readonly volts: number;
}

/** A plate's watts are meant at a kiln's working heat, where the wire's factor is level. Common practice, no source. */
const RATED_AT_C = 1200;

/**
 * What a new circuit measures cold, Ω, from what its plate promises hot: V²/P over the wire's factor.
 *
 * @throws BadInput for watts or volts that are none
 */
export function newOhmsOf(ratedW: number, ratedVolts: number): number {
  for (const [path, found] of [
    ["ratedW", ratedW],
    ["ratedVolts", ratedVolts],
  ] as const) {
    if (found > 0 && found < Number.POSITIVE_INFINITY) continue;
    throw new BadInput({ code: "out-of-range", path, found: String(found), expected: "a number above 0" });
  }
  return ratedVolts ** 2 / ratedW / resistanceFactor(RATED_AT_C);
}

/** What one circuit still gives. */
export interface CircuitCondition {
  readonly name: string;
  /** By what share its resistance has risen; null where it is broken. */
  readonly wornShare: number | null;
  readonly newW: number;
  /** With the wire cold, W. */
  readonly coldW: number;
  /** With the wire at the given heat, W. */
  readonly hotW: number;
  readonly hotAmps: number;
}

export interface ElementCondition {
  readonly circuits: readonly CircuitCondition[];
  readonly newW: number;
  readonly coldW: number;
  readonly hotW: number;
  /** Of the new power, what is left with cold wire: 1 is new. */
  readonly powerLeft: number;
  /** The even rise of resistance that would lose as much power. */
  readonly wornShare: number;
  /** What to know and do, one sentence each. */
  readonly notes: readonly string[];
}

/** Elements are renewed when about a tenth of the power is gone (common practice, no source). */
export const RENEW_BELOW = 0.9;
/** Lower than new by more than meters and leads explain. */
const TOO_LOW = 0.95;
/** One circuit worn more than another by this much heats its part of the kiln less. */
const UNEVEN = 0.05;

/** Measuring is for a kiln that cannot be live. Shown wherever resistances are asked for. */
export const MEASURING_CAUTION =
  "Measure with the kiln unplugged or its supply locked off, and cold; wiring is work for a licensed electrician, and the kiln's own manual goes first.";

/**
 * What the elements still give, by Ohm's law: P = V²/R, the resistance hot a little higher than cold.
 *
 * @param circuits measured cold
 * @param hotC the wire's temperature for the hot figures, °C
 * @throws BadInput for a resistance or voltage that cannot be
 */
export function elementCondition(circuits: readonly ElementCircuit[], hotC = 1200): ElementCondition {
  if (circuits.length === 0) {
    throw new BadInput({ code: "too-few", path: "circuits", found: "none", expected: "at least one circuit" });
  }
  circuits.forEach(checkCircuit);
  const factor = resistanceFactor(hotC);
  const found = circuits.map(({ name, newOhms, measuredOhms, volts }): CircuitCondition => {
    const coldW = measuredOhms === null ? 0 : volts ** 2 / measuredOhms;
    const hotW = coldW / factor;
    return {
      name,
      wornShare: measuredOhms === null ? null : measuredOhms / newOhms - 1,
      newW: volts ** 2 / newOhms,
      coldW,
      hotW,
      hotAmps: hotW / volts,
    };
  });
  const sum = (of: (circuit: CircuitCondition) => number): number => found.reduce((total, each) => total + of(each), 0);
  const newW = sum((each) => each.newW);
  const coldW = sum((each) => each.coldW);
  const powerLeft = coldW / newW;
  return {
    circuits: found,
    newW,
    coldW,
    hotW: sum((each) => each.hotW),
    powerLeft,
    wornShare: powerLeft > 0 ? 1 / powerLeft - 1 : Number.POSITIVE_INFINITY,
    notes: notesOn(found, powerLeft),
  };
}

function checkCircuit(circuit: ElementCircuit, i: number): void {
  const wrong = (field: "newOhms" | "measuredOhms" | "volts", expected: string): never => {
    throw new BadInput({
      code: "out-of-range",
      path: `circuits[${i}].${field}`,
      found: String(circuit[field]),
      expected,
    });
  };
  const between = (value: number, low: number, high: number): boolean => value >= low && value <= high;
  if (!between(circuit.newOhms, 0.5, 1000)) wrong("newOhms", "ohms, 0.5 to 1000");
  if (!between(circuit.volts, 12, 1000)) wrong("volts", "volts, 12 to 1000");
  if (circuit.measuredOhms !== null && !between(circuit.measuredOhms, 0.5, 1e4)) {
    wrong("measuredOhms", "ohms, 0.5 to 10000, or null where the meter shows no path");
  }
}

function notesOn(circuits: readonly CircuitCondition[], powerLeft: number): string[] {
  const notes: string[] = [];
  const whole = circuits.flatMap((each) => (each.wornShare === null ? [] : [each.wornShare]));
  for (const { name, wornShare } of circuits) {
    if (wornShare === null) notes.push(`${name} gives nothing: its wire is broken or an end is loose.`);
    else if (1 + wornShare < TOO_LOW) {
      const percent = Math.round(-wornShare * 100);
      notes.push(
        `${name} measures ${percent} % less than new: the value for new is wrong, or part of the wire is shorted.`,
      );
    }
  }
  if (powerLeft < RENEW_BELOW) {
    notes.push(
      `${Math.round((1 - powerLeft) * 100)} % of the power is gone; elements are usually renewed after a tenth.`,
    );
  }
  if (whole.length > 1 && Math.max(...whole) - Math.min(...whole) > UNEVEN) {
    const worst = circuits.find((each) => each.wornShare === Math.max(...whole)) as CircuitCondition;
    notes.push(`${worst.name} is worn most: its part of the kiln gets less than it did.`);
  }
  return notes;
}
