import { balancedBands } from "./balanced-bands.ts";
import { programmeHeldAlike } from "./held-alike.ts";
import { type PredictInput, type Prediction, predict } from "./predict.ts";

/** A change that was tried, and what it did. Temperatures are heat work in equivalent °C. */
export interface TriedChange {
  readonly kind: "hold" | "slower-end" | "element-balance" | "move-ware";
  /** What to do and what it brings, in a sentence. */
  readonly sentence: string;
  /** From the level that gets most to the one that gets least, with the change. */
  readonly spreadC: number;
  /** By how much the spread shrinks. */
  readonly gainC: number;
  /** Each level against the probe, with the change. */
  readonly offsetsC: readonly number[];
  /** Longer, and more energy, than without it. */
  readonly addedHours: number;
  readonly addedKWh: number;
  /** What was predicted with it: the input, to be used as it is. */
  readonly input: PredictInput;
}

/** How even a load comes out, and what would even it. */
export interface EvennessAdvice {
  readonly spreadC: number;
  /** Levels counted from zero at the floor; null for a load of fewer than two. */
  readonly coolest: number | null;
  readonly hottest: number | null;
  /** In a sentence, what is uneven, or that nothing is. */
  readonly sentence: string;
  /** Changes worth a degree or more, the one that helps most first. */
  readonly changes: readonly TriedChange[];
  /** What was tried and helps by less than a degree, in words. */
  readonly inVain: readonly string[];
}

/** Half a cone is about 10 °C at cone 6; levels closer than this are even (common practice, no source). */
const EVEN_C = 5;
const WORTH_C = 1;
const HOLDS_MIN = [10, 20, 30] as const;
/** A hold longer than this brings too little more. */
const ENOUGH_OF_BEST = 0.7;
const SLOWER = 0.6;
const NAMES: Readonly<Record<TriedChange["kind"], string>> = {
  hold: "a longer hold",
  "slower-end": "a slower end",
  "element-balance": "another balance of the elements",
  "move-ware": "trading the ware of two levels",
};

/**
 * Says which level runs cool and what would even the load out, by predicting the firing again with each change: a hold
 * or a slower end (the peak lowered so that the probe's heat work stays), another balance of the elements, ware moved
 * between levels. Nothing is claimed that was not run.
 *
 * @param before the prediction of the same input
 * @param mayTrade whether the ware of two levels fits in each other's place; where left out all are tried and the sentence says to see
 */
export function evennessAdvice(
  input: PredictInput,
  before: Prediction,
  mayTrade: (level: number, other: number) => boolean = () => true,
): EvennessAdvice {
  const offsets = before.levels.map((level) => level.offsetC);
  const spreadC = spreadOf(before);
  if (offsets.length < 2) {
    return { spreadC, coolest: null, hottest: null, sentence: "One level cannot be uneven.", changes: [], inVain: [] };
  }
  const coolest = offsets.indexOf(Math.min(...offsets));
  const hottest = offsets.indexOf(Math.max(...offsets));
  if (!before.finished) {
    const sentence = "The kiln does not reach the end of this programme; evening the load out comes after that.";
    return { spreadC, coolest, hottest, sentence, changes: [], inVain: [] };
  }
  if (spreadC < EVEN_C) {
    const sentence = `Every level gets the same to ${Math.max(1, Math.round(spreadC))} °C of heat work: nothing to even out.`;
    return { spreadC, coolest, hottest, sentence, changes: [], inVain: [] };
  }
  const sentence = `Level ${coolest + 1} runs cool: ${degrees(spreadC)} of heat work less than level ${hottest + 1}.`;
  const trial = (kind: TriedChange["kind"], changed: PredictInput, what: string): TriedChange => {
    const after = predict(changed);
    const spread = spreadOf(after);
    const addedHours = after.hours - before.hours;
    const addedKWh = after.kWh - before.kWh;
    return {
      kind,
      sentence: `${what}: the levels would lie ${degrees(spread)} apart instead of ${degrees(spreadC)}${cost(addedHours, addedKWh)}.`,
      spreadC: spread,
      gainC: after.finished ? spreadC - spread : Number.NEGATIVE_INFINITY,
      offsetsC: after.levels.map((level) => level.offsetC),
      addedHours,
      addedKWh,
      input: changed,
    };
  };
  const tried = [...programmeTrials(), ...balanceTrials(), ...tradeTrials()];
  const changes = tried.filter((each) => each.gainC >= WORTH_C).sort((a, b) => b.gainC - a.gainC);
  const vain = [...new Set(tried.map((each) => each.kind))].filter(
    (kind) => !changes.some((each) => each.kind === kind),
  );
  return { spreadC, coolest, hottest, sentence, changes, inVain: vain.map((kind) => NAMES[kind]) };

  function programmeTrials(): TriedChange[] {
    const holds = HOLDS_MIN.map((addedMin): TriedChange => {
      const programme = programmeHeldAlike(input, before, { addedHoldMin: addedMin, endRateShare: 1 });
      const peakC = Math.max(...programme.segments.map((segment) => segment.targetC));
      return trial("hold", { ...input, programme }, `Hold ${addedMin} minutes longer at a peak of ${peakC} °C`);
    });
    const best = Math.max(...holds.map((each) => each.gainC));
    // The shortest hold that brings most of what the longest would; where none helps, the first stands for all.
    const hold = holds.find((each) => each.gainC >= ENOUGH_OF_BEST * best) ?? holds[0];
    const programme = programmeHeldAlike(input, before, { addedHoldMin: 0, endRateShare: SLOWER });
    const end = programme.segments.find((segment, i) => segment !== input.programme.segments[i]);
    const rate = end?.rateCPerHour;
    const slower = rate
      ? [trial("slower-end", { ...input, programme }, `Climb to ${end.targetC} °C at ${rate} °C/h at the end`)]
      : [];
    return [...(hold ? [hold] : []), ...slower];
  }

  function balanceTrials(): TriedChange[] {
    const balance = balancedBands(input, before);
    if (!balance) return [];
    const kiln = { ...input.kiln, bandShares: balance.shares };
    return [trial("element-balance", { ...input, kiln }, balance.what)];
  }

  function tradeTrials(): TriedChange[] {
    const { levels } = input.load;
    const trades: TriedChange[] = [];
    for (let a = 0; a < levels.length; a++) {
      for (let b = a + 1; b < levels.length; b++) {
        const [low, high] = [levels[a], levels[b]];
        if (!low || !high || Math.abs(low.wareKg - high.wareKg) < 0.3 || !mayTrade(a, b)) continue;
        const traded = levels.map((level, i) => {
          const from = i === a ? high : i === b ? low : level;
          return { ...level, wareKg: from.wareKg, wareThicknessM: from.wareThicknessM };
        });
        const what = `Trade the ware of levels ${a + 1} and ${b + 1}, where the heights allow it`;
        trades.push(trial("move-ware", { ...input, load: { ...input.load, levels: traded } }, what));
      }
    }
    trades.sort((x, y) => y.gainC - x.gainC);
    return trades.slice(0, 1);
  }
}

function spreadOf(prediction: Prediction): number {
  const offsets = prediction.levels.map((level) => level.offsetC);
  return offsets.length < 2 ? 0 : Math.max(...offsets) - Math.min(...offsets);
}

const degrees = (value: number): string => `${Math.round(value)} °C`;

function cost(addedHours: number, addedKWh: number): string {
  const minutes = Math.round(addedHours * 60);
  const kWh = Math.round(addedKWh * 10) / 10;
  const parts = [
    ...(minutes === 0 ? [] : [`${Math.abs(minutes)} min ${minutes > 0 ? "longer" : "shorter"}`]),
    ...(kWh === 0 ? [] : [`${Math.abs(kWh)} kWh ${kWh > 0 ? "more" : "less"}`]),
  ];
  return parts.length === 0 ? "" : `, for ${parts.join(" and ")}`;
}
