import { describe, expect, test } from "vitest";
import { readLoadRequest } from "../loading/read-load-request.ts";
import { type SheetLevel, sheetLoad } from "./sheet-load.ts";
import { type ShelfDescent, shelfDescent } from "./shelf-descent.ts";

/** A round kiln 430 across, a disc 390 across in its middle: 20 mm of room all round, so 17 mm to move with 3 to spare. */
function descent(reachMm: number, probeHeightMm = 200, angleDeg = 60): ShelfDescent {
  const request = readLoadRequest({
    format: "load-request/1",
    kiln: {
      name: "kiln",
      chamber: { shape: "round", diameterMm: 430, depthMm: 460 },
      probes: [{ name: "thermocouple", angleDeg, heightMm: probeHeightMm, reachMm }],
    },
    furniture: {
      shelves: [{ name: "disc", shape: "disc", diameterMm: 390, thicknessMm: 16, count: 1 }],
      posts: [{ heightMm: 25, widthMm: 35, shape: "square", count: 3 }],
    },
    ware: [],
  });
  const level = { shelf: "disc", topMm: 41, xMm: 0, yMm: 0, turnDeg: 0, posts: [], placements: [] };
  const load = sheetLoad(request, { format: "load-plan/1", levels: [level], left: [], figures: {} });
  return shelfDescent(load, load.levels[0] as SheetLevel);
}

describe("getting a shelf down past a probe, worked by hand", () => {
  test("the probe ends 3 mm outside the shelf's edge: straight", () => {
    // 215 − 17 = 198 = 195 + 3.
    expect(descent(17)).toEqual({ way: "straight" });
  });

  test("a hair longer: held aside, away from the probe", () => {
    const found = descent(17.1);
    expect(found.way).toBe("aside");
    if (found.way === "aside") {
      expect(found.towardDeg).toBe(240);
      expect(found.byMm).toBe(5);
      expect(found.past).toEqual(["thermocouple"]);
    }
  });

  test("the probe reaches 5 mm over the shelf: 8 mm aside needed, told as 10", () => {
    expect(descent(25)).toMatchObject({ way: "aside", byMm: 10, towardDeg: 240 });
  });

  test("more needed than the wall leaves: tilted", () => {
    // 215 − 35 = 180: 195 + 3 − 180 = 18 mm needed, 17 there are.
    expect(descent(35)).toEqual({ way: "tilted", past: ["thermocouple"] });
  });

  test("a probe below the shelf's place is never passed", () => {
    expect(descent(60, 20)).toEqual({ way: "straight" });
    expect(descent(60, 26)).toMatchObject({ way: "tilted" });
  });

  test("turning the kiln turns the answer", () => {
    expect(descent(25, 200, 180)).toMatchObject({ way: "aside", byMm: 10, towardDeg: 0 });
  });
});
