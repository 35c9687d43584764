import { type PredictInput, type Prediction, predict } from "./predict.ts";

/** Another balance of the elements, and what it means in words. */
export interface BandBalance {
  readonly shares: readonly number[];
  readonly what: string;
}

/** A kiln whose elements are not told apart is tried in thirds. */
const THIRDS = [1, 1, 1] as const;
/** No band is given or spared more than this share of what it has: rewiring, not another kiln. */
const MOST_SHIFT = 0.3;
const PROBE_SHIFT = 0.1;
const LEAST_SHIFT = 0.02;

/**
 * The balance of the elements that evens the levels: the effect of a little more power in each band is found by
 * predicting it, and the mix with the least squares of what is left is taken, each band within 30 % of what it had.
 *
 * @returns null for elements that cannot be told apart from a better balance
 */
export function balancedBands(input: PredictInput, before: Prediction): BandBalance | null {
  const had = input.kiln.bandShares.length > 1 ? input.kiln.bandShares : THIRDS;
  const offsets = centred(before);
  const effects = had.map((share, band) => {
    const shares = had.map((each, i) => (i === band ? share * (1 + PROBE_SHIFT) : each));
    const after = centred(predict({ ...input, kiln: { ...input.kiln, bandShares: shares } }));
    return after.map((each, level) => (each - (offsets[level] as number)) / PROBE_SHIFT);
  });
  const shifts = leastUneven(effects, offsets);
  if (shifts.every((shift) => Math.abs(shift) < LEAST_SHIFT)) return null;
  return { shares: had.map((share, band) => share * (1 + (shifts[band] as number))), what: inWords(shifts, had) };
}

/** Each level's offset from the mean of all. */
function centred(prediction: Prediction): number[] {
  const mean = prediction.levels.reduce((sum, level) => sum + level.offsetC, 0) / prediction.levels.length;
  return prediction.levels.map((level) => level.offsetC - mean);
}

/** Shifts that minimise Σ (offset + Σ shift·effect)², by going down each band in turn; bounds keep it a small problem. */
function leastUneven(effects: readonly (readonly number[])[], offsets: readonly number[]): number[] {
  const shifts = effects.map(() => 0);
  for (let round = 0; round < 200; round++) {
    effects.forEach((effect, band) => {
      let along = 0;
      let square = 1e-9;
      effect.forEach((slope, level) => {
        const left =
          (offsets[level] as number) +
          effects.reduce((sum, e, i) => sum + (e[level] as number) * (shifts[i] as number), 0);
        along += slope * left;
        square += slope * slope;
      });
      const wanted = (shifts[band] as number) - along / square;
      shifts[band] = Math.max(-MOST_SHIFT, Math.min(MOST_SHIFT, wanted));
    });
  }
  // All bands up alike is more power, not another balance.
  const mean = shifts.reduce((sum, shift) => sum + shift, 0) / shifts.length;
  return shifts.map((shift) => Math.max(-MOST_SHIFT, Math.min(MOST_SHIFT, (1 + shift) / (1 + mean) - 1)));
}

function inWords(shifts: readonly number[], had: readonly number[]): string {
  const name = (band: number): string => {
    if (shifts.length === 3 && had === THIRDS)
      return ["the lowest third", "the middle third", "the top third"][band] as string;
    return `element band ${band + 1} from the floor`;
  };
  const parts = shifts.flatMap((shift, band) => {
    const percent = Math.round(Math.abs(shift) * 100);
    return percent < 2 ? [] : [`${name(band)} ${percent} % ${shift > 0 ? "more" : "less"}`];
  });
  return `Give ${listed(parts)} power, where the kiln's zones or new elements allow it`;
}

const listed = (parts: readonly string[]): string =>
  parts.length < 2 ? parts.join("") : `${parts.slice(0, -1).join(", ")} and ${parts.at(-1)}`;
