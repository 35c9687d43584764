import { BadInput } from "../../measures/bad-input.ts";
import { type ConeName, conePlace, ladderOf } from "../cones/cone.ts";
import { DOWN_AT, degreesBeyond } from "../heat-work/ladder-position.ts";
import { workOf } from "../heat-work/questions.ts";
import { aimedAt } from "../programme/aim-programme.ts";
import { peakSegment } from "../programme/ideal-curve.ts";
import type { Programme, Segment } from "../programme/programme.ts";
import { type PredictInput, type Prediction, predict, simulate } from "./predict.ts";

/** A change of the programme for the cone's sake: what to do, in a sentence, and the programme that does it. */
export interface ConeAdvice {
  readonly kind: "aim" | "hold";
  readonly sentence: string;
  /** To be used as it is; null where nothing needs changing or nothing would do. */
  readonly programme: Programme | null;
}

/** A cone with more than this to spare is worth a lower peak, °C of heat work. */
const TO_SPARE_C = 8;
const LONGEST_HOLD_MIN = 240;
const ROUNDS = 6;

/**
 * Whether a programme lays its cone down at the probe, on this kiln's own curve with this load, and the peak that would. A
 * lower peak is never advised while a level still lacks the cone: it would take still more from its ware.
 *
 * @param before the prediction of the same input
 */
export function aimAdvice(input: PredictInput, before: Prediction, cone: ConeName): ConeAdvice {
  const work = workAt(before, cone);
  const beyondC = degreesBeyond(cone, work);
  const down = work >= DOWN_AT;
  const lacking = before.levels.some(({ ladder }) => ladder < ladderOf(cone));
  if (down && (beyondC < TO_SPARE_C || lacking)) {
    return { kind: "aim", sentence: `At the probe cone ${cone} falls${spare(beyondC)}.`, programme: null };
  }
  const peakC = peakOf(input.programme);
  try {
    const programme = aimedAt(input.programme, cone, probeCurves(input));
    const aimedC = peakOf(programme);
    const sentence = down
      ? `At the probe cone ${cone} falls${spare(beyondC)}; a peak of ${aimedC} °C instead of ${peakC} is enough.`
      : `At the probe cone ${cone} gets ${percent(work)} of its work and stays standing; a peak of ${aimedC} °C instead of ${peakC} lays it down.`;
    return { kind: "aim", sentence, programme };
  } catch (error) {
    if (!(error instanceof BadInput) || error.code !== "never-reaches") throw error;
    const sentence = `At the probe cone ${cone} gets ${percent(work)} of its work, and no peak this kiln gets to with this load lays it down: fire to a cooler cone, hold longer, or have the elements and the supply measured.`;
    return { kind: "aim", sentence, programme: null };
  }
}

/**
 * How much longer to hold at the top so that the coolest level's cone falls, and what the hottest then gets.
 *
 * @returns null where the coolest level's cone falls anyway
 */
export function holdAdvice(input: PredictInput, before: Prediction, cone: ConeName): ConeAdvice | null {
  const levels = before.levels.map((level) => level.offsetC);
  if (levels.length === 0) return null;
  const coolest = levels.indexOf(Math.min(...levels));
  const hottest = levels.indexOf(Math.max(...levels));
  const workWith = (prediction: Prediction | ReturnType<typeof simulate>, level: number): number => {
    const firing = "firing" in prediction ? prediction.firing : prediction;
    return workOf(cone, { minutes: firing.minutes, tempC: firing.levelC[level] as Float64Array });
  };
  const work = workWith(before, coolest);
  if (work >= DOWN_AT) return null;
  const start = `On level ${coolest + 1}, the coolest, cone ${cone} gets ${percent(work)} of its work`;
  const addedMin = leastHold((minutes) =>
    workWith(simulate({ ...input, programme: held(input.programme, minutes) }), coolest),
  );
  if (addedMin === null) {
    const sentence = `${start}; even ${LONGEST_HOLD_MIN / 60} hours more of hold do not lay it down: the peak is too low.`;
    return { kind: "hold", sentence, programme: null };
  }
  const programme = held(input.programme, addedMin);
  const after = predict({ ...input, programme });
  const reached = percent(workWith(after, coolest));
  const over = after.levels[hottest];
  const hot =
    hottest === coolest || over === undefined
      ? ""
      : ` Level ${hottest + 1}, the hottest, then has cone ${over.coneDown ?? "022 not"} down${over.next === null ? "" : `, ${Math.round(over.towardNext * 100)} % toward ${over.next}`}.`;
  return {
    kind: "hold",
    sentence: `${start}; ${addedMin} min more of hold at the top lay it down (${reached}), for ${(after.kWh - before.kWh).toFixed(1)} kWh more.${hot}`,
    programme,
  };
}

/** The least whole minutes that bring a work to 1: the work rises almost straight with a hold, so secants find it. */
function leastHold(work: (minutes: number) => number): number | null {
  const known = new Map<number, number>();
  const at = (minutes: number): number => {
    const found = known.get(minutes) ?? work(minutes);
    known.set(minutes, found);
    return found;
  };
  let [low, high] = [0, 20];
  while (at(high) < DOWN_AT) {
    if (high === LONGEST_HOLD_MIN) return null;
    low = high;
    high = Math.min(LONGEST_HOLD_MIN, high * 3);
  }
  for (let round = 0; round < ROUNDS && high - low > 1; round++) {
    const share = (DOWN_AT - at(low)) / (at(high) - at(low));
    const between = Math.ceil(low + share * (high - low));
    const middle = Math.min(high - 1, Math.max(low + 1, between));
    if (at(middle) >= DOWN_AT) high = middle;
    else low = middle;
  }
  return high;
}

const percent = (share: number): string => `${Math.round(share * 100)} %`;
const spare = (beyondC: number): string => (beyondC < 1 ? "" : ` with ${Math.round(beyondC)} °C of heat work to spare`);

const held = (programme: Programme, minutes: number): Programme => {
  const peak = peakSegment(programme);
  const segments = programme.segments.map(
    (segment, i): Segment => (i === peak ? { ...segment, holdMin: segment.holdMin + minutes } : segment),
  );
  return { ...programme, segments };
};

const peakOf = (programme: Programme): number => programme.segments[peakSegment(programme)]?.targetC ?? 0;

const workAt = (prediction: Prediction, cone: ConeName): number => prediction.probe.cones[conePlace(cone)]?.work ?? 0;

/** What the probe reads for a programme in this kiln; each peak is run once. */
function probeCurves(input: PredictInput): (programme: Programme) => { minutes: Float64Array; tempC: Float64Array } {
  const known = new Map<number, { minutes: Float64Array; tempC: Float64Array }>();
  return (programme) => {
    const peakC = peakOf(programme);
    const found = known.get(peakC);
    if (found) return found;
    const { minutes, probeC } = simulate({ ...input, programme });
    const curve = { minutes, tempC: probeC };
    known.set(peakC, curve);
    return curve;
  };
}
