import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { overlap } from "./drawing.ts";
import { type LabelWish, placeLabels } from "./labels.ts";

const columns = { left: -90, right: 90, top: -80, bottom: 80 };
const wish = fc
  .record({
    x: fc.integer({ min: -70, max: 70 }),
    y: fc.integer({ min: -70, max: 70 }),
    roomMm: fc.integer({ min: 0, max: 12 }),
  })
  .map(
    ({ x, y, roomMm }): Omit<LabelWish, "outside"> => ({ x, y, roomMm, reachMm: roomMm, fill: "#000", choices: [] }),
  );
const wishes = fc.array(wish, { maxLength: 60 }).map((list) =>
  list.map((each, i): LabelWish => {
    const number = { text: String(i + 1), sizePt: 9, weight: "bold" } as const;
    const named = [
      { ...number, sizePt: 14 },
      { text: "rice bowl", sizePt: 9, weight: "regular" },
    ] as const;
    return { ...each, choices: [named, [number]], outside: number };
  }),
);

describe("placing labels", () => {
  test("no two overlap, wherever the pieces stand, even one upon another, and each is written once", () => {
    let outside = 0;
    fc.assert(
      fc.property(wishes, fc.boolean(), (list, roomy) => {
        const placed = placeLabels(list, columns, () => roomy);
        placed.labels.forEach((label, i) => {
          for (const other of placed.labels.slice(i + 1)) expect(overlap(label, other)).toBe(false);
        });
        const numbers = placed.labels.map(({ text }) => text).filter((text) => text !== "rice bowl");
        expect(numbers.sort()).toEqual(list.map((_, i) => String(i + 1)).sort());
        outside += placed.outside;
      }),
      { numRuns: 300 },
    );
    // The crowded cases must have been among them.
    expect(outside).toBeGreaterThan(100);
  });

  test("a roomy piece carries its name, a small one its number beside it, with no leader line", () => {
    const number = (text: string) => ({ text, sizePt: 9, weight: "bold" }) as const;
    const at = (x: number, roomMm: number, text: string): LabelWish => ({
      ...{ x, y: 0, roomMm, reachMm: roomMm, fill: "#000", outside: number(text) },
      choices: [[number(text), { text: "rice bowl", sizePt: 9, weight: "regular" }], [number(text)]],
    });
    const placed = placeLabels([at(-40, 20, "1"), at(20, 1, "2")], columns, () => true);
    expect(placed.labels.map(({ text }) => text)).toEqual(["1", "rice bowl", "2"]);
    expect(placed.labels[2]?.x).toBeGreaterThan(21);
    expect(placed.outside).toBe(0);
  });

  test("where nothing may stand beside it, a leader line goes to the nearer column", () => {
    const line = { text: "7", sizePt: 9, weight: "bold" } as const;
    const one: LabelWish = { x: 30, y: 5, roomMm: 0, reachMm: 1, fill: "#000", choices: [[line]], outside: line };
    const placed = placeLabels([one], columns, () => false);
    expect(placed.outside).toBe(1);
    expect(placed.leaders).toHaveLength(1);
    expect(placed.labels[0]?.x).toBe(90);
  });
});
