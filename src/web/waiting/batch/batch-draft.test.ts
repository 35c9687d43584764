import { describe, expect, test } from "vitest";
import { checkRecord } from "../../../studio/records/record-kind.ts";
import { WARE, type WareRecord } from "../../../studio/records/ware-record.ts";
import { FORM_NAMES } from "../../../ware/forms.ts";
import { sampleBatch } from "../testing/sample-batches.ts";
import {
  type BatchDraft,
  batchOf,
  draftOf,
  EMPTY_DRAFT,
  followingName,
  missingOf,
  type NewBatch,
} from "./batch-draft.ts";
import { suggestName } from "./name-suggestion.ts";

const NONE: ReadonlySet<string> = new Set();
const draft = (more: Partial<BatchDraft>): BatchDraft => ({
  ...EMPTY_DRAFT,
  form: "mug",
  acrossMm: 85,
  heightMm: 95,
  count: 6,
  ...more,
});
const made = (more: Partial<BatchDraft> = {}): NewBatch => batchOf(draft(more), "metric", NONE) as NewBatch;
const stamps = { createdAt: "2026-11-25T08:00:00.000Z", changedAt: "2026-11-25T08:00:00.000Z" };
const kept = (batch: NewBatch): WareRecord => checkRecord(WARE, { id: "b", ...batch, ...stamps }, "ware");

describe("a batch from a form and three numbers", () => {
  test.each(FORM_NAMES)("is one the studio keeps: %s", (form) => {
    const batch = kept(made({ form }));
    expect(batch.ware).toMatchObject({ count: 6, heightMm: 95, form });
  });

  test("has the handle its form has, and no profile: the planner keeps clear of its widest place", () => {
    const { ware } = made();
    expect(ware.handle).toMatchObject({ angleDeg: 0 });
    expect(ware).not.toHaveProperty("profile");
    expect(ware).not.toHaveProperty("spout");
    expect(made({ handle: null }).ware).not.toHaveProperty("handle");
  });

  test("takes the form's curve, or her own, where she says so", () => {
    expect(made({ form: "bowl", profile: "by-form" }).ware.profile?.at(-1)).toEqual([95, 42.5]);
    const own = [
      [0, 20],
      [95, 42.5],
    ] as const;
    expect(kept(made({ profile: own })).ware.profile).toEqual(own);
  });

  test("a box goes by the circle about its corners: sides of 120 and 90 mm make 150", () => {
    expect(made({ form: "box", acrossMm: 120, shorterMm: 90 }).ware.diameterMm).toBe(150);
  });

  test("a glaze is a recorded one or her words, never both", () => {
    expect(made({ glazeWords: " rust " }).ware.glaze).toBe("rust");
    expect(kept(made({ glazeId: "rain", glazeWords: "rust" })).ware).not.toHaveProperty("glaze");
  });

  test.each<[keyof BatchDraft, number | null, string]>([
    ["acrossMm", null, "acrossMm"],
    ["acrossMm", 0, "acrossMm"],
    ["heightMm", null, "heightMm"],
    ["count", null, "count"],
    ["count", 0, "count"],
    ["count", 1.5, "count"],
  ])("with %s %s it is no batch yet, and she is asked", (field, value, asked) => {
    const open = draft({ [field]: value });
    expect(Object.keys(missingOf(open))).toEqual([asked]);
    expect(batchOf(open, "metric", NONE)).toBeNull();
  });

  test("changed back and forth it stays itself", () => {
    const box = kept(
      made({ form: "box", acrossMm: 120, shorterMm: 90, cone: "6", cookie: { diameterMm: 80, thicknessMm: 6 } }),
    );
    const jug = kept(made({ form: "jug", mustFire: true, value: 3, glazeWords: "rust", dueOn: "2026-12-18" }));
    const bare = sampleBatch("bare");
    for (const record of [box, jug, bare]) {
      const { id: _, createdAt: __, changedAt: ___, ...batch } = record;
      expect(batchOf(draftOf(record), "metric", NONE)).toEqual(batch);
    }
  });
});

describe("the name suggested", () => {
  const size = { acrossMm: 85, shorterMm: null, heightMm: 95 };

  test("is the form and its measures, in her units", () => {
    expect(suggestName("mug", size, "metric", NONE)).toBe("Mug 85 × 95");
    expect(suggestName("mug", { ...size, acrossMm: 88.9 }, "inches", NONE)).toBe("Mug 3 1/2 × 3 3/4 in");
    expect(suggestName("box", { ...size, acrossMm: 140, shorterMm: 100 }, "metric", NONE)).toBe("Box 140 × 100 × 95");
    expect(suggestName("other", { acrossMm: null, shorterMm: null, heightMm: null }, "metric", NONE)).toBe("Piece");
  });

  test("is numbered where another batch has it", () => {
    const taken = new Set(["Mug 85 × 95", "Mug 85 × 95, 2"]);
    expect(suggestName("mug", size, "metric", taken)).toBe("Mug 85 × 95, 3");
  });

  test("gives way to hers", () => {
    expect(made({ name: " Ida's mug " }).ware.name).toBe("Ida's mug");
    expect(missingOf(draft({ name: "  " }))).toHaveProperty("name");
  });

  test("of a batch that is kept follows its size as long as it is the one suggested", () => {
    const resized = (name: string) => {
      const begun = followingName(draft({ name }), "metric", NONE);
      return (batchOf({ ...begun, heightMm: 100 }, "metric", NONE) as NewBatch).ware.name;
    };
    expect(resized("Mug 85 × 95")).toBe("Mug 85 × 100");
    expect(resized("Ida's mug")).toBe("Ida's mug");
  });
});
