import { describe, expect, test } from "vitest";
import type { KilnBuild } from "../kiln/build.ts";
import { readLoadRequest } from "../loading/read-load-request.ts";
import { handMadeLoad } from "../sheets/testing/sheet-cases.ts";
import { thermalKiln, thermalLoad } from "./thermal-load.ts";

const requestOf = (chamber: object, build?: KilnBuild) =>
  readLoadRequest({
    format: "load-request/1",
    kiln: { name: "shed", chamber, ...(build ? { build } : {}) },
    furniture: {
      shelves: [{ name: "half", shape: "half-disc", diameterMm: 380, thicknessMm: 15, count: 2 }],
      posts: [{ heightMm: 25, widthMm: 35, shape: "square", count: 3 }],
    },
    ware: [],
  });
const ROUND = { shape: "round", diameterMm: 400, depthMm: 450 };

describe("the kiln as a heater", () => {
  test.each([
    // πd²/4 and πd.
    ["round", ROUND, 0.125664, 1.256637],
    // Width × length, and twice their sum.
    ["rectangle", { shape: "rectangle", widthMm: 500, lengthMm: 400, depthMm: 450 }, 0.2, 1.8],
    // A regular octagon a across flats: 2(√2 − 1)a² and 8(√2 − 1)a.
    [
      "octagon",
      { shape: "polygon", sides: 8, acrossFlatsMm: 430, depthMm: 450 },
      2 * (Math.SQRT2 - 1) * 0.43 ** 2,
      8 * (Math.SQRT2 - 1) * 0.43,
    ],
  ])("%s: its floor and the way round it, by the formulas of plane geometry", (_, chamber, floorM2, roundM) => {
    const { kiln } = thermalKiln(requestOf(chamber));
    expect(kiln.floorAreaM2).toBeCloseTo(floorM2, 5);
    expect(kiln.wallRoundM).toBeCloseTo(roundM, 5);
    expect(kiln.depthM).toBe(0.45);
  });

  test("power goes with the square of the volts and falls with wear: 6 kW, 230 of 240 V, worn by a tenth", () => {
    const build = { powerW: 6000, ratedVolts: 240, suppliedVolts: 230, wornShare: 0.1 };
    expect(thermalKiln(requestOf(ROUND, build)).kiln.powerW).toBeCloseTo((6000 * (230 / 240) ** 2) / 1.1, 9);
  });

  test("volts that are not both known change nothing", () => {
    expect(thermalKiln(requestOf(ROUND, { powerW: 6000, suppliedVolts: 230 })).kiln.powerW).toBe(6000);
  });

  test("what is given is taken, and then nothing of it is assumed", () => {
    const build: KilnBuild = {
      powerW: 5000,
      wall: [
        { material: "brick 26", thicknessMm: 64 },
        { material: "fibre", thicknessMm: 25 },
      ],
      bandShares: [2, 1, 1],
      leakWattsPerK: 0.8,
      wallFactor: 1.2,
    };
    const { kiln, assumed } = thermalKiln(requestOf(ROUND, build), 12);
    expect(kiln.wall).toEqual([
      { material: "brick 26", thicknessM: 0.064 },
      { material: "fibre", thicknessM: 0.025 },
    ]);
    expect(kiln).toMatchObject({ bandShares: [2, 1, 1], leakWattsPerK: 0.8, wallFactor: 1.2, roomC: 12 });
    expect(assumed).toEqual([]);
  });

  test("what is not given is assumed, and said with the field that would settle it", () => {
    const { kiln, assumed } = thermalKiln(requestOf(ROUND));
    expect(kiln.powerW).toBeGreaterThan(4500);
    expect(kiln.powerW).toBeLessThan(6500);
    expect(assumed.join(" ")).toMatch(
      /usual for 57 litres; give kiln\.build\.powerW.*kiln\.build\.wall.*spread evenly/,
    );
  });
});

describe("a plan as the heat sees it", () => {
  const { request, plan } = handMadeLoad();

  test("levels come from the floor up, each with its own ware, shelf and posts", () => {
    const load = thermalLoad(request, { ...plan, levels: [...plan.levels].reverse() }, false);
    expect(load.levels.map((level) => level.shelfTopM)).toEqual([expect.closeTo(0.041, 12), expect.closeTo(0.207, 12)]);
    const [low, high] = load.levels as [(typeof load.levels)[0], (typeof load.levels)[0]];
    // A disc of 390 mm in an octagon 430 mm across: π·0.195² and 2(√2 − 1)·0.43² less it.
    expect(low.shelfAreaM2).toBeCloseTo(Math.PI * 0.195 ** 2, 9);
    expect(low.openAreaM2).toBeCloseTo(2 * (Math.SQRT2 - 1) * 0.43 ** 2 - Math.PI * 0.195 ** 2, 9);
    // Three posts 25 mm high, 35 mm square, of cordierite, 2100 kg/m³.
    expect(low.postsKg).toBeCloseTo(3 * 0.035 ** 2 * 0.025 * 2100, 9);
    // Three stacks: 100 mm square and 50 mm round.
    expect(high.postsKg).toBeCloseTo(3 * 2100 * (0.035 ** 2 * 0.1 + ((Math.PI * 0.03 ** 2) / 4) * 0.05), 9);
  });

  test("ware that was weighed counts with its weight, piece by piece", () => {
    const weighed = {
      ...request,
      ware: request.ware.map((ware) => ({ ...ware, massKg: ware.name === "mug" ? 0.4 : 1 })),
    };
    // Below: two mugs and a bowl; above: jug, jar, bowl and a mug.
    expect(thermalLoad(weighed, plan, false).levels.map((level) => level.wareKg)).toEqual([
      expect.closeTo(1.8, 12),
      expect.closeTo(3.4, 12),
    ]);
  });

  test("raw ware is green, and a half disc is half a disc", () => {
    expect(thermalLoad(request, plan, true).green).toBe(true);
    const half = requestOf(ROUND);
    const posts: [] = [];
    const level = { shelf: "half", topMm: 40, xMm: 0, yMm: 0, turnDeg: 0, posts, placements: [] };
    const load = thermalLoad(half, { format: "load-plan/1", levels: [level], left: [], figures: {} }, false);
    expect(load.levels[0]?.shelfAreaM2).toBeCloseTo((Math.PI * 0.19 ** 2) / 2, 9);
    expect(load.levels[0]).toMatchObject({ wareKg: 0, postsKg: 0 });
  });
});
