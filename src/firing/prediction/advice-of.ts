import type { ConeName } from "../cones/cone.ts";
import { type EvennessAdvice, evennessAdvice, type TriedChange } from "./advice.ts";
import { aimAdvice, holdAdvice } from "./cone-advice.ts";
import type { PredictInput, Prediction } from "./predict.ts";

/** One piece of advice: what was tried and what it brings, with the figures before and after, in a sentence. */
export interface Advice {
  readonly kind: "aim" | "uneven" | "in-vain" | TriedChange["kind"];
  readonly sentence: string;
  /** The firing with the change, to be predicted as it is; null where the sentence changes nothing. */
  readonly input: PredictInput | null;
}

/** More changes than this tire the reader; those that help most come first. */
const MOST_CHANGES = 3;

/**
 * Advice on a firing, every claim run through the kiln first: whether the cone falls at the probe and the peak that would
 * do it, the hold that brings the coolest level to the cone, which level runs cool and what would even the load out.
 *
 * A firing that does not reach its end has troubles of its own (`Prediction.troubles`), and no advice.
 *
 * @param prediction the prediction of the same input
 * @param cone the cone the ware wants; advice on reaching it is left out where none is given
 * @param mayTrade whether the ware of two levels fits in each other's place
 */
export function adviceOf(
  input: PredictInput,
  prediction: Prediction,
  cone?: ConeName,
  mayTrade?: (level: number, other: number) => boolean,
): Advice[] {
  if (!prediction.finished) return [];
  const advice: Advice[] = [];
  if (cone !== undefined) {
    for (const each of [aimAdvice(input, prediction, cone), holdAdvice(input, prediction, cone)]) {
      if (each === null) continue;
      const { kind, sentence, programme } = each;
      advice.push({ kind, sentence, input: programme === null ? null : { ...input, programme } });
    }
  }
  const evenness = evennessAdvice(input, prediction, mayTrade);
  if (evenness.coolest === null) return advice;
  advice.push({ kind: "uneven", sentence: evenness.sentence, input: null });
  for (const { kind, sentence, input: changed } of evenness.changes.slice(0, MOST_CHANGES)) {
    advice.push({ kind, sentence, input: changed });
  }
  return [...advice, ...inVain(evenness)];
}

function inVain({ inVain: names }: EvennessAdvice): Advice[] {
  if (names.length === 0) return [];
  const sentence = `Tried, and worth less than a degree: ${names.join(", ")}.`;
  return [{ kind: "in-vain", sentence, input: null }];
}
