import { peakSegment } from "../programme/ideal-curve.ts";
import type { Programme, Segment } from "../programme/programme.ts";
import { type PredictInput, type Prediction, predict } from "./predict.ts";

/** How the end of a programme is changed. */
export interface EndChange {
  readonly addedHoldMin: number;
  /** Multiplies the rate of the climb to the peak; 1 leaves it. */
  readonly endRateShare: number;
}

/** A peak is never lowered by more than this to make up for a hold. */
const FURTHEST_C = 60;
const ROUNDS = 4;

/**
 * The programme with its end changed and its peak moved by whole degrees, so that the probe's heat work stays what it
 * was: a change that merely fires hotter is no evenness.
 */
export function programmeHeldAlike(input: PredictInput, before: Prediction, change: EndChange): Programme {
  const wanted = before.probe.equivalentC;
  let lowerC = 0;
  let programme = changed(input.programme, change, lowerC);
  for (let round = 0; round < ROUNDS; round++) {
    const over = Math.round(predict({ ...input, programme }).probe.equivalentC - wanted);
    if (over === 0) break;
    lowerC = Math.max(-FURTHEST_C, Math.min(FURTHEST_C, lowerC + over));
    programme = changed(input.programme, change, lowerC);
  }
  return programme;
}

function changed(programme: Programme, { addedHoldMin, endRateShare }: EndChange, lowerC: number): Programme {
  const peak = peakSegment(programme);
  const segments = programme.segments.map((segment, i): Segment => {
    if (i !== peak) return segment;
    const { rateCPerHour } = segment;
    return {
      ...segment,
      rateCPerHour: rateCPerHour === null ? null : Math.round(rateCPerHour * endRateShare),
      targetC: segment.targetC - lowerC,
      holdMin: segment.holdMin + addedHoldMin,
    };
  });
  return { ...programme, segments };
}
