import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { BadInput } from "../measures/bad-input.ts";
import { GLAZE_WARE_RULES } from "./clearance-rules.ts";
import { readLoadRequest } from "./read-load-request.ts";

const text = readFileSync(new URL("../../golden/loading-rules/request.json", import.meta.url), "utf8");

// biome-ignore lint/suspicious/noExplicitAny: tests put anything anywhere
type Anything = any;
const fault = (spoil: (file: Anything) => void): string => {
  const file = JSON.parse(text);
  spoil(file);
  try {
    readLoadRequest(file);
  } catch (error) {
    if (error instanceof BadInput) return error.message;
    throw error;
  }
  return "none";
};

describe("reading a load request", () => {
  test("fills in what was left out", () => {
    const request = readLoadRequest(JSON.parse(text));
    expect(request.rules).toEqual(GLAZE_WARE_RULES);
    expect(request.kiln.probes).toEqual([]);
    expect(request.ware[0]).toMatchObject({ name: "beaker", handle: null, profile: null, cookie: null, value: 1 });
    expect(request.ware[0]?.mustFire).toBe(false);
  });

  test("keeps the rules she sets and the defaults of the others", () => {
    const file = { ...JSON.parse(text), rules: { gapMm: 10, lidMm: 0 } };
    expect(readLoadRequest(file).rules).toEqual({ ...GLAZE_WARE_RULES, gapMm: 10, lidMm: 0 });
  });

  test("takes as many pieces as one load can hold, and no more", () => {
    expect(fault((file) => (file.ware[0].count = 1990))).toBe("none");
    expect(fault((file) => (file.ware[0].count = 1991))).toMatch(/^ware: found 2001 pieces; expected at most 2000/);
    expect(fault((file) => (file.ware[0].count = 10_000))).toMatch(/^ware: found 10010 pieces; expected at most 2000/);
    expect(fault((file) => (file.ware = Array(10_000).fill(file.ware[0])))).toBe(
      "ware: found a list of 10000; expected at most 2000.",
    );
  });

  test.each<[string, (file: Anything) => unknown, string | RegExp]>([
    [
      "a wrong unit",
      (f) => delete Object.assign(f.ware[0], { heightCm: 6 }).heightMm,
      /^ware\[0\]\.heightCm: .*heightMm\.$/,
    ],
    ["a negative height", (f) => (f.ware[0].heightMm = -65), /^ware\[0\]\.heightMm: found -65; /],
    ["NaN", (f) => (f.kiln.chamber.depthMm = Number.NaN), /^kiln\.chamber\.depthMm: found NaN; /],
    ["a negative gap", (f) => (f.rules = { gapMm: -6 }), /^rules\.gapMm: found -6; .* at least 0/],
    ["an unknown field", (f) => (f.kiln.brand = "x"), /^kiln\.brand: found a field this format does not have/],
    ["an unknown shape", (f) => (f.kiln.chamber.shape = "oval"), /^kiln\.chamber\.shape: found "oval"; /],
    ["no shelves", (f) => (f.furniture.shelves = []), "furniture.shelves: found a list of 0; expected at least 1."],
    [
      "two kinds of ware with one name",
      (f) => (f.ware[1].name = "beaker"),
      /^ware\[1\]\.name: found "beaker" a second time/,
    ],
    [
      "two kinds of shelf with one name",
      (f) => (f.furniture.shelves[1].name = "full"),
      /^furniture\.shelves\[1\]\.name/,
    ],
    [
      "a profile that turns down",
      (f) => (f.ware[7].profile[2][0] = 40),
      /^ware\[7\]\.profile\[2\]: found a height of 40 after 50/,
    ],
    [
      "a profile wider than the piece",
      (f) => (f.ware[7].profile[2][1] = 61),
      /^ware\[7\]\.profile\[2\]: found a radius of 61; /,
    ],
    [
      "a profile that begins in the air",
      (f) => (f.ware[7].profile[0][0] = 1),
      /^ware\[7\]\.profile\[0\]: .* the foot at height 0/,
    ],
    [
      "a profile that stops short",
      (f) => (f.ware[7].profile[3][0] = 55),
      /^ware\[7\]\.profile\[3\]: found a last height of 55/,
    ],
    [
      "a profile of no width",
      (f) =>
        (f.ware[7].profile = [
          [0, 0],
          [60, 0],
        ]),
      /^ware\[7\]\.profile: found radii of 0/,
    ],
    [
      "a handle wider than it can be",
      (f) => (f.ware[5].handle.widthMm = 123),
      /^ware\[5\]\.handle\.widthMm: found 123; expected at most 122/,
    ],
    [
      "a probe above the lid",
      (f) => (f.kiln.probes = [{ name: "p", angleDeg: 0, heightMm: 461, reachMm: 25 }]),
      /^kiln\.probes\[0\]\.heightMm: found 461; .* depth of 460/,
    ],
    [
      "a probe through the wall opposite",
      (f) => (f.kiln.probes = [{ name: "p", angleDeg: 0, heightMm: 9, reachMm: 431 }]),
      /^kiln\.probes\[0\]\.reachMm: found 431; .* 430 to the wall/,
    ],
    [
      "a spyhole above the lid",
      (f) => (f.kiln.spyholes = [{ name: "s", angleDeg: 0, heightMm: 500, diameterMm: 20, open: true }]),
      /^kiln\.spyholes\[0\]\.heightMm: found 500; /,
    ],
    [
      "a spyhole wider than the chamber is deep",
      (f) => (f.kiln.spyholes = [{ name: "s", angleDeg: 0, heightMm: 200, diameterMm: 461, open: true }]),
      /^kiln\.spyholes\[0\]\.diameterMm: found 461; /,
    ],
  ])("refuses %s in one sentence that names the field", (_what, spoil, message) => {
    const said = fault(spoil);
    if (typeof message === "string") expect(said).toBe(message);
    else expect(said).toMatch(message);
    expect(said).toMatch(/: found .+; expected .+\.$/);
  });
});
