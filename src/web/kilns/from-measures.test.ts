import fc from "fast-check";
import { expect, test } from "vitest";
import type { Chamber } from "../../kiln/chamber.ts";
import { kilnFromMeasures, reshapedChamber } from "./from-measures.ts";
import { draftFault } from "./kiln-draft.ts";
import { shelfFit } from "./shelf-fit.ts";

const length = fc.integer({ min: 100, max: 1500 });
const chambers: fc.Arbitrary<Chamber> = fc.oneof(
  fc.record({ shape: fc.constant("round" as const), diameterMm: length, depthMm: length }),
  fc.record({ shape: fc.constant("rectangle" as const), widthMm: length, lengthMm: length, depthMm: length }),
  fc.record({
    shape: fc.constant("polygon" as const),
    sides: fc.integer({ min: 6, max: 14 }),
    acrossFlatsMm: length,
    depthMm: length,
  }),
);

test("a kiln made from measures alone is one that loads can be planned for, and its shelf goes in", () => {
  const every = fc.property(chambers, (chamber) => {
    const draft = kilnFromMeasures("my kiln", chamber);
    expect(draftFault(draft)).toBeNull();
    expect(shelfFit(chamber, draft.furniture.shelves[0]!).wallMm).toBeGreaterThanOrEqual(6);
    for (const { heightMm } of draft.furniture.posts) expect(heightMm).toBeLessThan(chamber.depthMm);
  });
  fc.assert(every, { numRuns: 60 });
});

test("a chamber of another shape is as wide and deep as before", () => {
  const eight: Chamber = { shape: "polygon", sides: 8, acrossFlatsMm: 400, depthMm: 450 };
  expect(reshapedChamber(eight, "round")).toEqual({ shape: "round", diameterMm: 400, depthMm: 450 });
  const box = reshapedChamber(eight, "rectangle");
  expect(box).toEqual({ shape: "rectangle", widthMm: 400, lengthMm: 400, depthMm: 450 });
  expect(reshapedChamber(box, "polygon")).toEqual(eight);
});
