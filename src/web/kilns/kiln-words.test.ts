import { describe, expect, test } from "vitest";
import type { Chamber } from "../../kiln/chamber.ts";
import type { Shelf } from "../../kiln/furniture.ts";
import { readyMadeKiln } from "../../kiln/ready-made-kilns.ts";
import { aboutVolumeText, chamberText, fitWords, inUseWords, shelvesText, volumeText } from "./kiln-words.ts";
import { shelfFit } from "./shelf-fit.ts";

const eight: Chamber = { shape: "polygon", sides: 8, acrossFlatsMm: 390, depthMm: 450 };

test("a volume is said in her units: a box a foot each way is one cubic foot", () => {
  const foot: Chamber = { shape: "rectangle", widthMm: 304.8, lengthMm: 304.8, depthMm: 304.8 };
  expect(volumeText(foot, "inches")).toBe("1 cubic foot");
  expect(volumeText(foot, "metric")).toBe("28 litres");
  expect(volumeText(eight, "metric")).toBe("57 litres");
  expect(volumeText(eight, "inches")).toBe("2 cubic feet");
});

test("a ready-made size is said roundly", () => {
  const about = (id: string, units: "metric" | "inches") => aboutVolumeText(readyMadeKiln(id)!.kiln.chamber, units);
  expect(["eight-sided", "square-front", "ten-sided"].map((id) => about(id, "metric"))).toEqual([
    "about 57 litres",
    "about 100 litres",
    "about 200 litres",
  ]);
  expect(["eight-sided", "ten-sided"].map((id) => about(id, "inches"))).toEqual([
    "about 2 cubic feet",
    "about 7 cubic feet",
  ]);
});

test("a chamber is said by its shape and measures", () => {
  expect(chamberText(eight, "metric")).toBe("Eight-sided, 390 mm across, 450 mm deep");
  expect(chamberText({ shape: "round", diameterMm: 254, depthMm: 304.8 }, "inches")).toBe(
    "Round, 10 in across, 12 in deep",
  );
  expect(chamberText({ shape: "rectangle", widthMm: 450, lengthMm: 450, depthMm: 500 }, "metric")).toBe(
    "Square, 450 × 450 mm, 500 mm deep",
  );
});

describe("whether a shelf goes in", () => {
  const words = (shelf: Partial<Shelf>, wallMm = 6) => {
    const whole = { name: "s", thicknessMm: 15, count: 1, shape: "disc", diameterMm: 355, ...shelf } as Shelf;
    return fitWords(shelfFit(eight, whole), whole, wallMm, "metric");
  };

  test("is said at once with the number", () => {
    expect(words({})).toEqual({ verdict: "fits", words: "18 mm to the wall." });
    expect(words({ diameterMm: 402 })).toEqual({
      verdict: "cannot",
      words: "Cannot go in: 12 mm too wide for the chamber.",
    });
    expect(words({ diameterMm: 384 })).toEqual({
      verdict: "near",
      words: "3 mm to the wall. You ask for 6 mm, so no load can use it.",
    });
    expect(words({ diameterMm: 384 }, 3).verdict).toBe("fits");
    expect(words({ diameterMm: 390 }, 0).words).toBe("Touches the wall.");
    expect(words({ shape: "half-disc", diameterMm: 355 }).words).toBe("As a pair 18 mm to the wall.");
  });
});

test("furniture is counted, and what there is none of is not mentioned", () => {
  const eightSided = readyMadeKiln("eight-sided")!;
  expect(shelvesText(eightSided.furniture)).toBe("4 shelves, 2 half shelves, 33 posts");
  const shelves = [{ ...eightSided.furniture.shelves[0]!, count: 1 }];
  expect(shelvesText({ shelves, posts: [] })).toBe("1 shelf");
  expect(shelvesText({ shelves: [], posts: [] })).toBe("No shelves, no posts");
});

test("a kiln in use says which loads keep it", () => {
  expect(inUseWords("Shed", [{ name: "cups" }])).toBe("Shed stays: a load is planned for it (cups). Remove it first.");
  const many = ["a", "b", "c", "d"].map((name) => ({ name }));
  expect(inUseWords("Shed", many)).toBe(
    "Shed stays: 4 loads are planned for it (a, b, c and 1 more). Remove them first.",
  );
});
