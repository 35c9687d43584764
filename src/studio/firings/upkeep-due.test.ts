import { describe, expect, test } from "vitest";
import { elementCondition } from "../../firing/elements/element-condition.ts";
import * as sample from "../../store/testing/sample-records.ts";
import type { UpkeepRecord, UpkeepWork } from "../records/upkeep-record.ts";
import { firedFiring } from "./testing/fired-load.ts";
import { upkeepDue } from "./upkeep-due.ts";

const kiln = sample.kiln();
const day = (n: number): string => new Date(Date.UTC(2026, 0, 1) + n * 86_400_000).toISOString();
/** One firing every other day at noon, eight hours each. */
const firings = Array.from({ length: 40 }, (_, i) =>
  firedFiring({
    ...{ id: `f${i}`, kilnId: kiln.id, startedAt: day(2 * i + 0.5), shutOffAt: day(2 * i + 0.5 + 1 / 3) },
    endedAt: day(2 * i + 1.2),
  }),
);
const entry = (what: UpkeepWork, at: number, more: Partial<UpkeepRecord> = {}): UpkeepRecord => {
  const { ohms: _, ...plain } = sample.upkeep(`${what}-${at}`, { what, at: day(at), kilnId: kiln.id });
  return { ...plain, ...more };
};
const measured = (at: number, ...ohms: number[]) => entry("element resistance", at, { ohms });

describe("elements", () => {
  test("a steady rise is carried on to a tenth of the power: by Ohm's law, worked by hand", () => {
    // 0.25 % of resistance a firing: 20 Ω new, 20.5 after ten, 21 after twenty. The limit, 1/0.9 of new, is 44.4 firings.
    const book = [
      entry("elements changed", 0.1),
      ...[measured(0.2, 20, 20), measured(20, 20.5, 20.5), measured(40, 21, 21)],
    ];
    const { elements } = upkeepDue(kiln, book, firings.slice(0, 30));
    const { wear } = elements;
    expect(elements.firings).toBe(30);
    expect(elements.hours).toBeCloseTo(240, 6);
    expect(wear.fromNew).toBe(true);
    expect(wear.points.map(({ firings: n }) => n)).toEqual([0, 10, 20]);
    expect(wear.risePerFiring).toBeCloseTo(0.0025, 9);
    expect(wear.powerLeft).toBeCloseTo(1 / 1.075, 9);
    expect(wear.remainingFirings?.expected).toBeCloseTo((1 / 0.9 - 1) / 0.0025 - 30, 6);
    expect(wear.limit.source).toMatch(/common practice/);
  });

  test("power left is what the library of elements reckons from the same resistances", () => {
    const book = [entry("elements changed", 0.1), measured(0.2, 18, 25), measured(10, 19.5, 25.75)];
    const { wear } = upkeepDue(kiln, book, firings.slice(0, 5)).elements;
    const circuits = [
      { name: "top", newOhms: 18, measuredOhms: 19.5, volts: 230 },
      { name: "bottom", newOhms: 25, measuredOhms: 25.75, volts: 230 },
    ];
    expect(wear.points[1]?.rise).toBeCloseTo(elementCondition(circuits).wornShare, 12);
  });

  test("scatter is told as a spread; a new set begins anew; another limit is another end", () => {
    const book = [
      ...[
        entry("elements changed", 0.1),
        measured(0.2, 20),
        measured(20, 20.6),
        measured(40, 20.9),
        measured(60, 21.6),
      ],
    ];
    const { wear } = upkeepDue(kiln, book, firings).elements;
    const { expected, least, most } = wear.remainingFirings as NonNullable<typeof wear.remainingFirings>;
    expect(least).toBeLessThan(expected);
    expect(most).toBeGreaterThan(expected);
    const later = upkeepDue(kiln, book, firings, 0.2).elements.wear.remainingFirings;
    expect(later?.expected).toBeGreaterThan(expected + 20);
    const renewed = upkeepDue(kiln, [...book, entry("elements changed", 61)], firings).elements;
    expect(renewed.firings).toBe(9);
    expect(renewed.wear).toMatchObject({ points: [], remainingFirings: null });
  });

  test("with one measuring, or none, or another number of circuits nothing is foretold, and she is told", () => {
    const wearOf = (...book: UpkeepRecord[]) => upkeepDue(kiln, book, firings).elements.wear;
    expect(wearOf()).toMatchObject({ points: [], powerLeft: null, remainingFirings: null });
    expect(wearOf(measured(30, 20))).toMatchObject({ fromNew: false, remainingFirings: null });
    expect(wearOf(measured(30, 20)).notes.join()).toMatch(/how worn the set was then is not known.*One more/s);
    expect(wearOf(measured(30, 20), measured(50, 20, 21)).notes.join()).toMatch(/another number of circuits/);
    expect(wearOf(measured(30, 20), measured(50, 19.9)).notes.join()).toMatch(/has not risen/);
  });
});

test("shelves, probe and relays are counted from their last change, and asked after when it is long ago", () => {
  const book = [
    ...[entry("shelf washed", 1, { count: 4 }), entry("shelf cracked", 9), entry("shelf turned", 9, { count: 2 })],
    ...[entry("probe changed", 70), measured(10, 20)],
  ];
  const { shelves, probe, relay, all, reminders } = upkeepDue(kiln, book, firings);
  expect(shelves).toEqual({ of: 4, washed: 4, turned: 2, cracked: 1, firingsSinceWash: 39, firingsSinceTurn: 35 });
  expect([all.firings, probe.firings, relay.firings]).toEqual([40, 5, 40]);
  expect(relay.changedAt).toBeNull();
  expect(reminders.map(({ what }) => what)).toEqual(["Measure the elements", "Look at the wash on the shelves"]);
  for (const { source } of reminders) expect(source).toMatch(/common practice/);
  expect(upkeepDue({ ...kiln, id: "other" }, book, firings).all.firings).toBe(0);
});
