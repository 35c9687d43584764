import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { EMPTY_DRAFT } from "./batch-draft.ts";
import { nextDraft, rememberedOf } from "./remembered.ts";

const known = { clayBodyIds: new Set(["buff"]), glazeIds: new Set(["rain"]), today: "2026-11-25" };
const last = {
  ...EMPTY_DRAFT,
  form: "bowl",
  name: "Ida's bowl",
  acrossMm: 150,
  heightMm: 70,
  count: 4,
  stage: "glazed",
  firingKind: "glaze",
  cone: "6",
  clayBodyId: "buff",
  glazeId: "rain",
  dueOn: "2026-12-01",
  cookie: { diameterMm: 80, thicknessMm: 6 },
  ownerNote: "for Ida",
} as const;
const text = JSON.stringify(rememberedOf(last));

describe("the next batch", () => {
  test("begins with what the last had in common, without its size, count, name and note", () => {
    expect(nextDraft(text, known)).toEqual({
      ...last,
      name: null,
      acrossMm: null,
      heightMm: null,
      count: null,
      ownerNote: "",
    });
  });

  test("forgets a day that has passed, and materials that are gone", () => {
    const later = nextDraft(text, { clayBodyIds: new Set(), glazeIds: new Set(), today: "2026-12-02" });
    expect(later).toMatchObject({ dueOn: null, clayBodyId: null, glazeId: null, cone: "6" });
  });

  test("begins empty where nothing was remembered, or nothing that makes sense", () => {
    expect(nextDraft(null, known)).toEqual(EMPTY_DRAFT);
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.json()), (odd) => {
        const draft = nextDraft(odd, known);
        expect(Object.keys(draft).sort()).toEqual(Object.keys(EMPTY_DRAFT).sort());
      }),
    );
    const wrong = {
      form: "spoon",
      cone: 6,
      stage: "raw",
      glazeId: 3,
      value: -1,
      cookie: { diameterMm: 0 },
      dueOn: "soon",
    };
    expect(nextDraft(JSON.stringify(wrong), known)).toEqual(EMPTY_DRAFT);
  });
});
