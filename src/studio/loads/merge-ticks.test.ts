import fc from "fast-check";
import { expect, test } from "vitest";
import { mergeTicks, type TickSaid } from "./merge-ticks.ts";

const moment = (minute: number): string => `2026-11-25T12:${String(minute).padStart(2, "0")}:00.000Z`;
const said = (placement: number, minute: number, isIn = true): TickSaid => ({
  level: 0,
  placement,
  at: moment(minute),
  in: isIn,
});
const LATE = moment(59);
const none = { ticks: [] };

test("the latest word on each place counts, and a tick taken back stays so when an older tick comes late", () => {
  const first = mergeTicks(none, [said(0, 10), said(1, 11), said(0, 20, false)], LATE);
  expect(first.ticks).toEqual([{ level: 0, placement: 1, at: moment(11) }]);
  const late = mergeTicks(first, [said(0, 15)], LATE);
  expect(late).toEqual(first);
  expect(mergeTicks(first, [said(0, 30)], LATE).ticks).toHaveLength(2);
});

test("a phone whose clock runs ahead is believed up to now, so that its tick can be taken back", () => {
  const ahead = mergeTicks(none, [said(0, 50)], moment(10));
  expect(ahead.ticks).toEqual([{ level: 0, placement: 0, at: moment(10) }]);
  expect(mergeTicks(ahead, [said(0, 12, false)], moment(12)).ticks).toEqual([]);
});

test("in any order, in any parts and however often, the same ticks come to the same", () => {
  const word = fc.record({
    placement: fc.integer({ min: 0, max: 3 }),
    minute: fc.integer({ min: 0, max: 50 }),
    isIn: fc.boolean(),
  });
  const words = fc.array(word, { maxLength: 12 });
  fc.assert(
    fc.property(words, fc.array(fc.nat()), fc.nat(12), (list, order, cut) => {
      const all = list.map(({ placement, minute, isIn }) => said(placement, minute, isIn));
      const shuffled = [...all, ...all.slice(0, cut)].sort(
        (a, b) => (order[all.indexOf(a)] ?? 0) - (order[all.indexOf(b)] ?? 0),
      );
      const whole = mergeTicks(none, all, LATE);
      const inParts = mergeTicks(mergeTicks(none, shuffled.slice(0, cut), LATE), shuffled.slice(cut), LATE);
      expect({ takenBack: [], ...inParts }).toEqual({ takenBack: [], ...whole });
      // For each place: in where its latest word says so.
      for (const placement of [0, 1, 2, 3]) {
        const about = all.filter((each) => each.placement === placement);
        const last = about
          .map(({ at }) => at)
          .sort()
          .at(-1);
        const isIn = about.some((each) => each.at === last && each.in);
        expect(whole.ticks.some((tick) => tick.placement === placement)).toBe(isIn);
      }
    }),
  );
});
