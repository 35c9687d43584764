/**
 * A firing draws for hours: a load of three hours or more counts as continuous, its circuit rated for 125 % of its
 * current (NFPA 70, NEC 210.19(A)(1) and 210.20(A), from memory; other places have codes of their own).
 */
const CONTINUOUS = 1.25;

export interface CircuitLoad {
  readonly amps: number;
  /** The least a circuit should be rated for by that rule, A. */
  readonly circuitAtLeastA: number;
  readonly enough: boolean | null;
  readonly sentence: string;
}

/**
 * Holds a kiln's current against its circuit.
 *
 * @param amps what the kiln draws at full power
 * @param circuitA what its circuit breaker is rated for; null where she does not know
 */
export function continuousLoad(amps: number, circuitA: number | null): CircuitLoad {
  const circuitAtLeastA = amps * CONTINUOUS;
  const enough = circuitA === null ? null : circuitA >= circuitAtLeastA;
  const draws = `It draws ${amps.toFixed(1)} A for hours; a circuit for that is rated ${circuitAtLeastA.toFixed(1)} A or more`;
  const has =
    circuitA === null
      ? ""
      : enough
        ? `, and this one is (${circuitA} A)`
        : `, and this one is rated ${circuitA} A only`;
  const first = "The kiln's manual, the local code and a licensed electrician go before this rule.";
  return { amps, circuitAtLeastA, enough, sentence: `${draws}${has}. ${first}` };
}
