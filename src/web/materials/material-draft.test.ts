import { describe, expect, test } from "vitest";
import { EMPTY_MATERIAL, materialDraft, materialFields, problemOf } from "./material-draft.ts";

describe("a clay body or glaze written down", () => {
  test("needs a name no other has, capitals aside", () => {
    const taken = new Set(["rain"]);
    expect(problemOf(EMPTY_MATERIAL, taken)).toBe("It needs a name.");
    expect(problemOf({ ...EMPTY_MATERIAL, name: " Rain " }, taken)).toBe("There is one called Rain already.");
    expect(problemOf({ ...EMPTY_MATERIAL, name: "Slate" }, taken)).toBeNull();
  });

  test("has the cones in their order, one cone alone at both ends, or none", () => {
    const cones = (coolest: "" | "5" | "06", hottest: "" | "6" | "04" | "06") =>
      materialFields({ ...EMPTY_MATERIAL, name: "a", coolest, hottest }).cones;
    expect(cones("5", "6")).toEqual({ coolest: "5", hottest: "6" });
    expect(cones("5", "")).toEqual({ coolest: "5", hottest: "5" });
    expect(cones("", "6")).toEqual({ coolest: "6", hottest: "6" });
    expect(cones("5", "06")).toEqual({ coolest: "06", hottest: "5" });
    expect(cones("", "")).toBeNull();
  });

  test("comes back as it was kept", () => {
    const kept = { name: "Rain", cones: { coolest: "5", hottest: "6" } as const, note: "thin" };
    expect(materialFields(materialDraft(kept))).toEqual(kept);
  });
});
