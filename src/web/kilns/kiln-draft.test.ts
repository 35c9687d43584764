import { describe, expect, test } from "vitest";
import { readyMadeKiln } from "../../kiln/ready-made-kilns.ts";
import { fieldOf, problemAt } from "./field-problem.ts";
import { changedParts, draftFault, freeName, type KilnDraft, reshaped, withRule } from "./kiln-draft.ts";

const eight = readyMadeKiln("eight-sided")!;
const draft: KilnDraft = { kiln: eight.kiln, furniture: eight.furniture, rules: {} };
const probe = eight.kiln.probes![0]!;

describe("a draft's fault", () => {
  test("of a ready-made kiln is none", () => expect(draftFault(draft)).toBeNull());

  test.each<[string, Partial<KilnDraft>, string, string]>([
    [
      "a probe above the lid",
      { kiln: { ...eight.kiln, probes: [{ ...probe, heightMm: 500 }] } },
      "kiln.probes[0].heightMm",
      "500 mm will not do: a height inside the chamber, at most its depth of 450 mm.",
    ],
    [
      "a probe through the wall opposite",
      { kiln: { ...eight.kiln, probes: [{ ...probe, reachMm: 395.5 }] } },
      "kiln.probes[0].reachMm",
      "395.5 mm will not do: a reach inside the chamber, at most the 390 mm to the wall opposite.",
    ],
    [
      "no name",
      { kiln: { ...eight.kiln, name: "" } },
      "kiln.name",
      "Nothing here will not do: at least one character.",
    ],
    [
      "a clearance below nothing",
      { rules: { gapMm: -3 } },
      "rules.gapMm",
      "-3 mm will not do: a length of at least 0 mm and at most 5000 mm.",
    ],
  ])("%s stands at its field in words", (_, change, path, words) => {
    const fault = draftFault({ ...draft, ...change });
    expect(fault).not.toBeNull();
    expect(problemAt(fault, path, "metric")).toBe(words);
    expect(problemAt(fault, "kiln.chamber.depthMm", "metric")).toBeUndefined();
  });

  test("is said in inches where she reads inches", () => {
    const fault = draftFault({ ...draft, kiln: { ...eight.kiln, probes: [{ ...probe, heightMm: 508 }] } });
    expect(problemAt(fault, "kiln.probes[0].heightMm", "inches")).toBe(
      "20 in will not do: a height inside the chamber, at most its depth of 17 11/16 in.",
    );
  });

  test("from the server stands at the same field", () => {
    expect(fieldOf({ path: 'kiln "k1".kiln.name', found: "", expected: "" })).toBe("kiln.name");
  });
});

describe("what a change sends", () => {
  test("is only the part that differs, and nothing where nothing does", () => {
    expect(changedParts(draft, { ...draft, rules: {} })).toBeNull();
    expect(changedParts(draft, { ...draft, rules: { gapMm: 8 } })).toEqual({ rules: { gapMm: 8 } });
    const named = { ...draft, kiln: { ...draft.kiln, name: "shed" } };
    expect(changedParts(draft, named)).toEqual({ kiln: named.kiln });
  });

  test("a new thing gets a name of its own", () => {
    expect(freeName("probe", [])).toBe("probe");
    expect(freeName("probe", [{ name: "probe" }])).toBe("probe 2");
    expect(freeName("probe 2", [{ name: "probe" }, { name: "probe 2" }])).toBe("probe 3");
  });

  test("a clearance of her own is written down, the usual one is not, so that it stays the usual", () => {
    const own = withRule(withRule(draft, "gapMm", 9), "lidMm", 30);
    expect(own.rules).toEqual({ gapMm: 9, lidMm: 30 });
    expect(withRule(own, "gapMm", null).rules).toEqual({ lidMm: 30 });
    expect(withRule(own, "lidMm", 25).rules).toEqual({ gapMm: 9 });
  });

  test("a shelf of another shape is as wide as it was, and a whole shelf of the format", () => {
    for (const shelf of eight.furniture.shelves) {
      for (const shape of ["disc", "half-disc", "polygon", "rectangle"] as const) {
        const shelves = [reshaped(shelf, shape)];
        expect(draftFault({ ...draft, furniture: { ...draft.furniture, shelves } })).toBeNull();
        expect(reshaped(shelves[0]!, shelf.shape)).toEqual(shelf);
      }
    }
  });
});
