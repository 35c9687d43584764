import { expect, test } from "vitest";
import type { Clearance } from "../../../loading/checker/clearances.ts";
import { answerWords, clearanceWords, whatMatters } from "./answer-words.ts";

const to = (kind: Clearance["kind"], name: string, distanceMm: number, leastMm: number): Clearance => ({
  kind,
  to: name,
  distanceMm,
  leastMm,
  place: { kind: "chamber" },
});

test("a clearance says how far, and what the least is where it falls short", () => {
  expect(clearanceWords(to("ware", "bowl", 9, 6), "metric")).toBe("9 mm to the bowl");
  expect(clearanceWords(to("ware", "bowl", 2, 6), "metric")).toBe("2 mm to the bowl, at least 6 mm");
  expect(clearanceWords(to("post", "post 1 under level 3", -4, 6), "metric")).toBe(
    "4 mm into the post 1 under level 3",
  );
  expect(clearanceWords(to("ware", "bowl", 0, 6), "metric")).toBe("touches the bowl, at least 6 mm");
  expect(clearanceWords(to("shelf edge", "the shelf's edge", -12, 0), "metric")).toBe("12 mm over the shelf’s edge");
  expect(clearanceWords(to("ware", "bowl", 25.4, 6), "inches")).toBe("1 in to the bowl");
});

test("beside it and within the rules, what has least to spare matters; the lid only where it is too near", () => {
  const near = [to("ware", "bowl", 20, 6), to("shelf edge", "the shelf's edge", 9, 0), to("lid", "the lid", 26, 25)];
  expect(whatMatters(near)?.kind).toBe("shelf edge");
  expect(whatMatters([...near.slice(0, 2), to("lid", "the lid", 20, 25)])?.kind).toBe("lid");
  expect(whatMatters([])).toBeNull();
});

test("exactly the least is enough", () => {
  expect(answerWords({ broken: [], near: [to("ware", "bowl", 6 - 1e-9, 6)] }, "metric")).toBe("6 mm to the bowl");
});

test("several things too near are counted, also of one kind", () => {
  const near = [to("ware", "bowl", 1, 6)];
  const broken = ["bowl", "mug"].map((name) => ({
    rule: "gapMm",
    level: 0,
    things: [name],
    foundMm: 1,
    allowedMm: 6,
    message: "",
    places: [],
  }));
  expect(answerWords({ broken, near }, "metric")).toBe("1 mm to the bowl, at least 6 mm; 1 more too near");
});
