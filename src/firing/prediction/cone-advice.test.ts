import { expect, test } from "vitest";
import { conePlace, ladderOf } from "../cones/cone.ts";
import { workOf } from "../heat-work/questions.ts";
import { adviceOf } from "./advice-of.ts";
import { aimAdvice, holdAdvice } from "./cone-advice.ts";
import { type PredictInput, predict } from "./predict.ts";
import { climbTo, levelAt, SMALL_KILN, SMALL_LOAD } from "./testing/small-kiln.ts";

const inputTo = (peakC: number, change: Partial<PredictInput> = {}): PredictInput => ({
  kiln: SMALL_KILN,
  load: SMALL_LOAD,
  programme: climbTo(peakC),
  ...change,
});
const workAtProbe = (input: PredictInput): number => predict(input).probe.cones[conePlace("6")]?.work ?? 0;

test("a peak that is too low is raised until the cone falls on the kiln's own curve, and not a degree further", () => {
  const input = inputTo(1195);
  const advice = aimAdvice(input, predict(input), "6");
  expect(advice.sentence).toMatch(/stays standing; a peak of 12\d\d °C instead of 1195 lays it down/);
  if (advice.programme === null) throw new Error("no programme");
  const peakC = advice.programme.segments[1]?.targetC as number;
  expect(workAtProbe({ ...input, programme: advice.programme })).toBeGreaterThanOrEqual(0.999);
  expect(workAtProbe(inputTo(peakC - 1))).toBeLessThan(1);
});

test("a peak that is far too high is lowered, and one that is right is left alone", () => {
  const high = aimAdvice(inputTo(1240), predict(inputTo(1240)), "6");
  expect(high.sentence).toMatch(/cone 6 falls with \d+ °C of heat work to spare; a peak of 12\d\d °C instead of 1240/);
  const right = inputTo(high.programme?.segments[1]?.targetC as number);
  expect(aimAdvice(right, predict(right), "6")).toMatchObject({
    programme: null,
    sentence: expect.stringMatching(/cone 6 falls/),
  });
});

test("a peak is never lowered for the probe's sake while a level still lacks its cone", () => {
  // All the power at the lid: the probe in the middle has its cone with much to spare, the level at the floor has not.
  const input = inputTo(1240, { kiln: { ...SMALL_KILN, bandShares: [0.25, 1, 1.75] } });
  const before = predict(input);
  expect(Math.min(...before.levels.map(({ ladder }) => ladder))).toBeLessThan(ladderOf("6"));
  const advice = aimAdvice(input, before, "6");
  expect(advice.sentence).toMatch(/At the probe cone 6 falls with \d+ °C of heat work to spare\.$/);
  expect(advice.programme).toBeNull();
});

test("a kiln without the power is told so, not sent higher", () => {
  const weak = inputTo(1050, { kiln: { ...SMALL_KILN, powerW: 4300 } });
  const advice = aimAdvice(weak, predict(weak), "6");
  expect(advice.programme).toBeNull();
  expect(advice.sentence).toMatch(/no peak this kiln gets to with this load lays it down/);
});

test("the hold it names is the least whole minutes that bring the coolest level to the cone", () => {
  const input = inputTo(1212, {
    load: { ...SMALL_LOAD, levels: [levelAt(0.04, 4), levelAt(0.16, 7), levelAt(0.29, 3)] },
  });
  const before = predict(input);
  const offsets = before.levels.map((level) => level.offsetC);
  const coolest = offsets.indexOf(Math.min(...offsets));
  const advice = holdAdvice(input, before, "6");
  const minutes = advice?.programme?.segments[1]?.holdMin as number;
  expect(minutes).toBeGreaterThan(0);
  expect(advice?.sentence).toMatch(
    new RegExp(
      `level ${coolest + 1}, the coolest.*; ${minutes} min more of hold .*Level \\d, the hottest, then has cone`,
    ),
  );
  const workWith = (holdMin: number): number => {
    const { firing } = predict({ ...input, programme: climbTo(1212, holdMin) });
    return workOf("6", { minutes: firing.minutes, tempC: firing.levelC[coolest] as Float64Array });
  };
  expect(workWith(minutes)).toBeGreaterThanOrEqual(0.999);
  expect(workWith(minutes - 1)).toBeLessThan(0.999);
});

test("a peak so low that no hold would do is said to be too low; a cone that falls everywhere asks for no hold", () => {
  const low = inputTo(1130);
  expect(holdAdvice(low, predict(low), "6")).toMatchObject({
    programme: null,
    sentence: expect.stringMatching(/the peak is too low/),
  });
  const high = inputTo(1250);
  expect(holdAdvice(high, predict(high), "6")).toBeNull();
});

test("all the advice on a firing, in order, each a sentence with figures; what it changes can be run", () => {
  const input = inputTo(1205, { kiln: { ...SMALL_KILN, bandShares: [0.7, 1, 1.3] } });
  const before = predict(input);
  const advice = adviceOf(input, before, "6");
  expect(advice.map(({ kind }) => kind).slice(0, 3)).toEqual(["aim", "hold", "uneven"]);
  expect(advice.some(({ kind }) => kind === "element-balance")).toBe(true);
  for (const { sentence, input: changed } of advice) {
    expect(sentence).toMatch(/\.$/);
    if (changed) expect(predict(changed).finished).toBe(true);
  }
  expect(adviceOf(input, before).some(({ kind }) => kind === "aim")).toBe(false);
});

test("a firing that never ends has troubles, not advice", () => {
  const weak = inputTo(1222, { kiln: { ...SMALL_KILN, powerW: 2500 } });
  const before = predict(weak);
  expect(before.troubles.join()).toMatch(/The kiln stalls at \d+ °C in segment 1 and never reaches 1100 °C/);
  expect(adviceOf(weak, before, "6")).toEqual([]);
});
