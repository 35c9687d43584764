import fc from "fast-check";
import { expect, test } from "vitest";
import type { Grade } from "../records/faults.ts";
import { type Judged, mergeOutcomes } from "./merge-outcomes.ts";

const moment = (minute: number): string => `2026-11-25T12:${String(minute).padStart(2, "0")}:00.000Z`;
const said = (placement: number, grade: Grade | null, minute: number, more: Partial<Judged> = {}): Judged => ({
  ...{ level: 0, placement, grade, at: moment(minute) },
  ...more,
});
const LATE = moment(59);

test("of two words on one piece the later counts, in whatever order they come", () => {
  const words = [said(1, "good", 1), said(1, "lost", 3), said(1, "second", 2), said(0, "good", 1)];
  for (const order of [words, [...words].reverse()]) {
    const { outcomes } = mergeOutcomes({}, order, LATE);
    expect(outcomes.map(({ placement, grade }) => [placement, grade])).toEqual([
      [0, "good"],
      [1, "lost"],
    ]);
  }
});

test("a judgement taken back stays so when an older one comes late; a later one counts, and the mark goes", () => {
  const back = mergeOutcomes(mergeOutcomes({}, [said(0, "lost", 20)], LATE), [said(0, null, 30)], LATE);
  expect(back).toEqual({ outcomes: [], takenBack: [{ level: 0, placement: 0, at: moment(30) }] });
  expect(mergeOutcomes(back, [said(0, "second", 25)], LATE)).toEqual(back);
  expect(mergeOutcomes(back, [said(0, "good", 40)], LATE)).toMatchObject({
    outcomes: [{ placement: 0, grade: "good", at: moment(40) }],
    takenBack: [],
  });
});

test("a firing kept before there were marks gets none for nothing", () => {
  expect(mergeOutcomes({}, [said(0, "good", 1)], LATE)).not.toHaveProperty("takenBack");
});

test("a clock that runs ahead is believed up to now, so that its word can be taken back", () => {
  const ahead = mergeOutcomes({}, [said(0, "lost", 50)], moment(10));
  expect(ahead.outcomes[0]?.at).toBe(moment(10));
  expect(mergeOutcomes(ahead, [said(0, null, 12)], moment(12)).outcomes).toEqual([]);
});

test("what it becomes is kept with it, and a fault named twice is kept once", () => {
  const more = { faults: ["crawling", "crawling", "pinholes"], becomes: "again" } as const;
  expect(mergeOutcomes({}, [said(0, "second", 1, more)], LATE).outcomes).toEqual([
    { ...said(0, "second", 1), faults: ["crawling", "pinholes"], note: "", becomes: "again" },
  ]);
  expect(mergeOutcomes({}, [said(0, "second", 1)], LATE).outcomes[0]).not.toHaveProperty("becomes");
});

test("in any order and in any parts, words of different moments come to the same", () => {
  const word = fc.record({
    placement: fc.integer({ min: 0, max: 2 }),
    minute: fc.integer({ min: 0, max: 50 }),
    grade: fc.constantFrom<Grade | null>("good", "second", "lost", null),
  });
  const words = fc.uniqueArray(word, { maxLength: 10, selector: ({ placement, minute }) => `${placement} ${minute}` });
  fc.assert(
    fc.property(
      words.chain((list) => fc.tuple(fc.constant(list), fc.shuffledSubarray(list, { minLength: list.length }))),
      fc.nat(10),
      ([list, shuffled], cut) => {
        const all = list.map(({ placement, grade, minute }) => said(placement, grade, minute));
        const mixed = shuffled.map(({ placement, grade, minute }) => said(placement, grade, minute));
        const whole = mergeOutcomes({}, all, LATE);
        const inParts = mergeOutcomes(mergeOutcomes({}, mixed.slice(0, cut), LATE), mixed.slice(cut), LATE);
        expect({ takenBack: [], ...inParts }).toEqual({ takenBack: [], ...whole });
        for (const placement of [0, 1, 2]) {
          const last = all.filter((each) => each.placement === placement).sort((a, b) => (a.at < b.at ? 1 : -1))[0];
          const kept = whole.outcomes.find((each) => each.placement === placement);
          expect(kept?.grade ?? null).toBe(last?.grade ?? null);
        }
      },
    ),
  );
});
