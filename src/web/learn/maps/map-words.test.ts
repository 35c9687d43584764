import { expect, test } from "vitest";
import type { KilnMaps, PlaceTally, Tally } from "../../../studio/firings/kiln-maps.ts";
import { commonestFault, heatWords, tallyWords, worstPlace } from "./map-words.ts";

const tally = (good: number, second: number, lost: number, faults: Tally["faults"] = []): Tally => {
  const pieces = good + second + lost;
  return { pieces, good, second, lost, faults, badShare: pieces === 0 ? 0 : (second + lost) / pieces };
};

test("heat is told by a word and a figure, what was foretold beside what cones saw", () => {
  const heat = { height: "top", overC: 8.4, foretoldOverC: -4, shelves: 2 } as const;
  expect(heatWords(heat, "C")).toBe("8 °C hot by the cones of 2 shelves; foretold 4 °C cool");
  expect(heatWords({ ...heat, overC: -10 }, "F")).toBe("18 °F cool by the cones of 2 shelves; foretold 7 °F cool");
  expect(heatWords({ ...heat, overC: 1, shelves: 1 }, "C")).toMatch(/^As wanted by the cones of one shelf;/);
  expect(heatWords({ ...heat, overC: null, shelves: 0 }, "C")).toBe("No cone yet; foretold 4 °C cool");
  expect(heatWords({ ...heat, overC: null, foretoldOverC: null, shelves: 0 }, "C")).toMatch(/No cone has told/);
});

test("what became of pieces, and their commonest fault", () => {
  expect(tallyWords(tally(7, 1, 1))).toBe("9 pieces: 7 good, 1 second, 1 lost");
  expect(tallyWords(tally(0, 2, 1))).toBe("3 pieces: 2 seconds, 1 lost");
  expect(tallyWords(tally(0, 0, 1))).toBe("1 piece: 1 lost");
  expect(tallyWords(tally(0, 0, 0))).toBe("nothing fired here yet");
  expect(commonestFault(tally(1, 2, 0, [["pinholes", 2]]))).toBe("pinholes, 2 times");
  expect(commonestFault(tally(1, 0, 0))).toBe("–");
});

test("a place is called worst only where enough stood in it and it is far worse than the kiln", () => {
  const place = (height: PlaceTally["height"], of: Tally): PlaceTally => ({ height, part: "middle", ...of });
  const few = place("top", tally(0, 0, 2));
  const bad = place("bottom", tally(3, 1, 2));
  const fine = place("middle", tally(30, 1, 0));
  const maps = (...places: PlaceTally[]): KilnMaps => ({
    ...{ firings: 2, heat: [], byGlaze: [], byForm: [], places },
    all: tally(33, 2, 4),
  });
  expect(worstPlace(maps(few, bad, fine))).toBe(bad);
  expect(worstPlace(maps(few, fine))).toBeNull();
});
