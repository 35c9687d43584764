import { describe, expect, test } from "vitest";
import type { ConeRange } from "../../../firing/cones/cone-range.ts";
import { type BatchDraft, EMPTY_DRAFT } from "./batch-draft.ts";
import { coneDoubt } from "./cone-doubt.ts";

const stamps = { createdAt: "2026-11-25T08:00:00.000Z", changedAt: "2026-11-25T08:00:00.000Z" };
const cones = (coolest: ConeRange["coolest"], hottest: ConeRange["hottest"]): ConeRange => ({ coolest, hottest });
const materials = {
  glazes: [{ id: "rain", name: "Rain", cones: cones("5", "6"), runs: false, note: "", ...stamps }],
  clayBodies: [{ id: "red", name: "Red earthenware", cones: cones("06", "02"), note: "", ...stamps }],
};
const doubt = (more: Partial<BatchDraft>) =>
  coneDoubt({ ...EMPTY_DRAFT, firingKind: "glaze", glazeId: "rain", ...more }, "Mug", materials);

describe("a cone that does not go with the glaze or the clay", () => {
  test("is doubted in a sentence", () => {
    expect(doubt({ cone: "04" })).toBe("Mug needs cones 5 to 6 (Rain); cone 04 is too cool.");
    expect(doubt({ cone: "6", clayBodyId: "red" })).toContain("No firing suits both");
    expect(doubt({ cone: "6", clayBodyId: "red", firingKind: "bisque" })).toContain("too hot");
  });

  test("is not, where it goes with them, where none is said, or where the glaze comes later", () => {
    expect(doubt({ cone: "6" })).toBeNull();
    expect(doubt({ cone: "" })).toBeNull();
    expect(doubt({ cone: "04", firingKind: null })).toBeNull();
    expect(doubt({ cone: "04", firingKind: "bisque", clayBodyId: "red" })).toBeNull();
    expect(doubt({ cone: "04", glazeId: null })).toBeNull();
  });
});
