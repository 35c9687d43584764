import fc from "fast-check";
import { expect, test } from "vitest";
import { changeOf, isAsBefore, turnedRound, withChange } from "./record-change.ts";

const field = fc.oneof(
  fc.integer(),
  fc.string(),
  fc.constant(null),
  fc.array(fc.record({ a: fc.integer() }), { maxLength: 3 }),
);
const record = fc
  .dictionary(fc.constantFrom("name", "plan", "note", "version"), field, { maxKeys: 4 })
  .map((fields): Record<string, unknown> & { id: string } => ({ ...fields, id: "r" }));
const without = ({ version: _, ...rest }: Record<string, unknown>) => rest;

test("a change made and taken back leaves a record as it was, but for its version", () => {
  fc.assert(
    fc.property(record, record, (before, after) => {
      const change = changeOf("notes", "r", before, after);
      if (change === null) {
        expect(without(after)).toEqual(without(before));
        return;
      }
      expect(isAsBefore(before, change)).toBe(true);
      expect(isAsBefore(after, change)).toBe(false);
      expect(without(withChange(before, change))).toEqual(without(after));
      expect(without(withChange(after, turnedRound(change)))).toEqual(without(before));
      expect(withChange(before, change).version).toEqual(before.version);
    }),
  );
});

test("what a change is not about may be otherwise by then, and stays so", () => {
  const change = changeOf("notes", "r", { id: "r", text: "a", other: 1 }, { id: "r", text: "b", other: 1 });
  if (change === null) throw new Error("it changed");
  const meanwhile = { id: "r", text: "b", other: 2 };
  expect(isAsBefore(meanwhile, turnedRound(change))).toBe(true);
  expect(withChange(meanwhile, turnedRound(change))).toEqual({ id: "r", text: "a", other: 2 });
  expect(isAsBefore({ ...meanwhile, text: "c" }, turnedRound(change))).toBe(false);
});

test("that other fields were changed later, and when, does not stand in the way of taking a change back", () => {
  const before = { id: "f", state: "firing", notices: [], changedAt: "2026-11-25T10:00:00.000Z" };
  const after = { ...before, state: "cooling", changedAt: "2026-11-25T11:00:00.000Z" };
  const change = changeOf("firings", "f", before, after);
  if (change === null) throw new Error("it changed");
  const noticedSince = { ...after, notices: ["overshoot"], changedAt: "2026-11-25T11:05:00.000Z" };
  expect(isAsBefore(noticedSince, turnedRound(change))).toBe(true);
  expect(withChange(noticedSince, turnedRound(change))).toMatchObject({ state: "firing", notices: ["overshoot"] });
});

test("a record that came and went again has not changed", () => {
  expect(changeOf("notes", "r", null, null)).toBeNull();
  const whole = { id: "r", text: "a" };
  const made = { kind: "notes", id: "r", before: null, after: whole };
  expect(changeOf("notes", "r", null, whole)).toEqual(made);
  expect(isAsBefore(null, made as never)).toBe(true);
  expect(isAsBefore(whole, made as never)).toBe(false);
});
