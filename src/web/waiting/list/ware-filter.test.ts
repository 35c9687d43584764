import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { listed, namesOf, sampleBatch } from "../testing/sample-batches.ts";
import {
  FACETS,
  type Facet,
  facetValues,
  filterWare,
  isOpen,
  NO_FILTER,
  toggled,
  type WareFilter,
} from "./ware-filter.ts";

const ware = listed([
  sampleBatch("cup", { cone: "6", form: "beaker" }, { dueOn: "2026-11-20", glazeId: "rain" }),
  sampleBatch("plate", { cone: "6", form: "plate", glaze: "her own mix" }, { dueOn: "2026-11-28" }),
  sampleBatch("jar", { cone: "06", form: "jar" }, { firingKind: "bisque", stage: "greenware", clayBodyId: "buff" }),
  sampleBatch("tile", { form: "tile" }, { firingKind: null, ownerNote: "for the bathhouse" }),
  sampleBatch("old cup", { cone: "6", form: "beaker" }, { stage: "finished", firingKind: null }),
]);
const chosen = (...choices: [Facet, string][]): WareFilter =>
  choices.reduce((filter, [facet, value]) => toggled(filter, facet, value), NO_FILTER);
const shown = (filter: WareFilter) => namesOf(filterWare(ware, filter));

describe("the filter of what waits", () => {
  test("without a choice shows all but what is finished", () => {
    expect(shown(NO_FILTER)).toEqual(["cup", "plate", "jar", "tile"]);
    expect(isOpen(NO_FILTER)).toBe(true);
  });

  test("shows any of the values chosen in one facet, and only what fits every facet", () => {
    expect(shown(chosen(["cone", "6"]))).toEqual(["cup", "plate"]);
    expect(shown(chosen(["cone", "6"], ["cone", "06"]))).toEqual(["cup", "plate", "jar"]);
    expect(shown(chosen(["cone", "6"], ["due", "late"]))).toEqual(["cup"]);
    expect(shown(chosen(["kind", "none"]))).toEqual(["tile"]);
    expect(shown(chosen(["stage", "finished"]))).toEqual(["old cup"]);
  });

  test("a value chosen twice is not chosen", () => {
    expect(chosen(["due", "late"], ["due", "late"])).toEqual(NO_FILTER);
  });

  test("6 and 06 are different cones, whatever is typed or chosen", () => {
    expect(shown({ ...NO_FILTER, words: "cone 06" })).toEqual(["jar"]);
    expect(shown(chosen(["cone", "06"]))).toEqual(["jar"]);
  });

  test.each([
    ["RAIN", ["cup"]],
    ["own mix", ["plate"]],
    ["buff", ["jar"]],
    ["bathhouse tile", ["tile"]],
    ["glaze beaker", ["cup"]],
    ["nothing such", []],
  ])("finds every word of %s in name, form, glaze, clay and note", (words, names) => {
    expect(shown({ ...NO_FILTER, words })).toEqual(names);
  });

  test("each value's count is what a press on it alone in its facet would show", () => {
    const choice = fc.constantFrom<[Facet, string]>(
      ["kind", "glaze"],
      ["kind", "none"],
      ["cone", "6"],
      ["due", "late"],
      ["due", "none"],
      ["stage", "bisque"],
      ["stage", "finished"],
      ["form", "beaker"],
    );
    const words = fc.constantFrom("", "cup", "cone 6");
    fc.assert(
      fc.property(fc.array(choice, { maxLength: 4 }), words, (choices, typed) => {
        const filter = { ...chosen(...choices), words: typed };
        const values = facetValues(ware, filter);
        for (const facet of FACETS) {
          for (const { value, count } of values[facet]) {
            const alone = { ...filter, chosen: { ...filter.chosen, [facet]: [value] } };
            expect(count, `${facet} ${value}`).toBe(filterWare(ware, alone).length);
          }
        }
      }),
    );
  });

  test("offers only values some batch has, cones from cool to hot, and keeps a chosen one in sight", () => {
    expect(facetValues(ware, NO_FILTER).cone.map(({ value }) => value)).toEqual(["06", "6", "none"]);
    const withNoMore = facetValues(ware, chosen(["cone", "10"]));
    expect(withNoMore.cone).toContainEqual({ value: "10", count: 0, isChosen: true });
  });
});
