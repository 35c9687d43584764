import { describe, expect, test } from "vitest";
import { BadInput } from "../../measures/bad-input.ts";
import type { ThermalKiln, ThermalLoad } from "../thermal/kiln-network.ts";
import { canClimb, wornShareAtLimit } from "./can-climb.ts";
import { continuousLoad } from "./continuous-load.ts";
import { elementCondition, newOhmsOf } from "./element-condition.ts";
import { ELEMENT_WIRE, resistanceFactor } from "./element-wire.ts";

const circuit = { name: "top", newOhms: 19.2, measuredOhms: 19.2, volts: 240 } as const;

describe("element wire", () => {
  // The maker's table of Ct for 22Cr-5.8Al wire, at its own points and between.
  test.each([
    [20, 1],
    [500, 1.01],
    [1000, 1.04],
    [1200, 1.04],
    [1350, 1.045],
    [2000, 1.05],
  ])("at %d °C it has %d times its cold resistance", (celsius, factor) => {
    expect(resistanceFactor(celsius)).toBeCloseTo(factor, 9);
  });
  test("its table rises with temperature and never falls", () => {
    ELEMENT_WIRE.resistanceFactor.slice(1).forEach(([celsius, factor], i) => {
      const [coolerC, lower] = ELEMENT_WIRE.resistanceFactor[i] as readonly [number, number];
      expect(celsius).toBeGreaterThan(coolerC);
      expect(factor).toBeGreaterThanOrEqual(lower);
    });
  });
});

describe("the elements' condition", () => {
  test("new circuits give V²/R cold, and 4 % less hot", () => {
    // Two circuits of 19.2 Ω at 240 V: 3 kW and 12.5 A each (Ohm's law).
    const condition = elementCondition([circuit, { ...circuit, name: "bottom" }], 1200);
    expect(condition.newW).toBeCloseTo(6000, 9);
    expect(condition.hotW).toBeCloseTo(6000 / 1.04, 9);
    expect(condition.circuits[0]?.hotAmps).toBeCloseTo(12.5 / 1.04, 9);
    expect(condition).toMatchObject({ powerLeft: 1, wornShare: 0, notes: [] });
  });
  test("2300 W at 230 V are 10 A and 23 Ω hot, 22.12 Ω cold (Ohm's law)", () => {
    expect(newOhmsOf(2300, 230)).toBeCloseTo(23 / 1.04, 12);
    const rated = { name: "all", newOhms: newOhmsOf(2300, 230), measuredOhms: newOhmsOf(2300, 230), volts: 230 };
    expect(elementCondition([rated]).hotW).toBeCloseTo(2300, 9);
    expect(elementCondition([rated]).circuits[0]?.hotAmps).toBeCloseTo(10, 9);
    // A tenth more resistance leaves 1/1.1 of the power; 208 V of 240 leave (208/240)² = 0.7511 of it.
    expect(elementCondition([{ ...rated, measuredOhms: 1.1 * rated.newOhms }]).wornShare).toBeCloseTo(0.1, 12);
    const low = { name: "all", newOhms: newOhmsOf(6000, 240), measuredOhms: newOhmsOf(6000, 240), volts: 208 };
    expect(elementCondition([low]).hotW).toBeCloseTo(6000 * 0.751111, 2);
    expect(() => newOhmsOf(0, 230)).toThrow(/ratedW: found 0; expected a number above 0/);
  });
  test("a worn circuit is told from a good one, and the loss is counted", () => {
    const condition = elementCondition([
      { ...circuit, measuredOhms: 24 },
      { ...circuit, name: "bottom" },
    ]);
    expect(condition.circuits[0]?.wornShare).toBeCloseTo(0.25, 9);
    expect(condition.powerLeft).toBeCloseTo(0.9, 9);
    expect(condition.notes).toEqual([expect.stringMatching(/^top is worn most/)]);
  });
  test("a broken circuit and one measuring too low are named", () => {
    const condition = elementCondition([
      { ...circuit, measuredOhms: null },
      { ...circuit, name: "bottom", measuredOhms: 15 },
    ]);
    expect(condition.notes.join("\n")).toMatch(/top gives nothing[\s\S]*bottom measures 22 % less than new/);
    expect(condition.circuits[0]).toMatchObject({ coldW: 0, wornShare: null });
  });
  test("values that cannot be are refused with their field", () => {
    expect(() => elementCondition([{ ...circuit, measuredOhms: 0 }])).toThrow(/circuits\[0\]\.measuredOhms/);
    expect(() => elementCondition([{ ...circuit, volts: Number.NaN }])).toThrow(BadInput);
    expect(() => elementCondition([])).toThrow(/circuits/);
  });
});

describe("whether a kiln still climbs", () => {
  const kiln: ThermalKiln = {
    floorAreaM2: 0.14,
    wallRoundM: 1.36,
    depthM: 0.41,
    wall: [{ material: "brick 23", thicknessM: 0.064 }],
    powerW: 6000,
    leakWattsPerK: 0.5,
    bandShares: [1],
    wallFactor: 1,
    roomC: 20,
  };
  const level = {
    shelfThicknessM: 0.016,
    shelfAreaM2: 0.11,
    openAreaM2: 0.03,
    wareKg: 4,
    wareThicknessM: 0.006,
    postsKg: 0.6,
  };
  const load: ThermalLoad = {
    levels: [0.04, 0.16, 0.29].map((shelfTopM) => ({ ...level, shelfTopM })),
    green: false,
    massFactor: 1,
  };
  const question = { kiln, load, cone: "6" } as const;

  test("a kiln of its class does, new", () => {
    const climb = canClimb(question);
    expect(climb.verdict).toBe("yes");
    expect(climb.coneDownC).toBeGreaterThan(1180);
    expect(climb.stallsAtC ?? 1400).toBeGreaterThan(climb.coneDownC as number);
  });
  test("weaker elements climb slower, then stall, and it says where", () => {
    const rates = [1, 0.85, 0.75].map((left) => canClimb({ ...question, coldPowerW: 6000 * left }).rateCPerHour ?? 0);
    expect(rates[0]).toBeGreaterThan(rates[1] as number);
    expect(rates[1]).toBeGreaterThan(rates[2] as number);
    const stalled = canClimb({ ...question, coldPowerW: 3000 });
    expect(stalled).toMatchObject({ verdict: "no", rateCPerHour: null });
    expect(stalled.sentence).toMatch(/stalls near \d+ °C, short of cone 6, 1222 °C/);
    // Where it stalls its losses eat all it gives; with less power it stalls cooler.
    expect(canClimb({ ...question, coldPowerW: 2400 }).stallsAtC).toBeLessThan(stalled.stallsAtC as number);
  });
  test("a cooler cone is reached where a hotter one is not", () => {
    const weak = { ...question, coldPowerW: 3600 } as const;
    expect(canClimb({ ...weak, cone: "06" }).verdict).not.toBe("no");
    expect(canClimb({ ...weak, cone: "10" }).verdict).toBe("no");
  });
  test("the limit of wear lies between a kiln that climbs and one that does not", () => {
    const worn = (share: number) => canClimb({ ...question, kiln: { ...kiln, powerW: 6000 / (1 + share) } }).verdict;
    const usual = wornShareAtLimit(question) as number;
    expect(usual).toBeGreaterThan(0);
    expect(worn(usual)).toBe("yes");
    expect(worn(usual + 0.01)).toBe("slowly");
    const atAll = wornShareAtLimit(question, "at all") as number;
    expect(atAll).toBeGreaterThan(usual);
    expect(worn(atAll)).toBe("slowly");
    expect(worn(atAll + 0.01)).toBe("no");
    expect(wornShareAtLimit({ ...question, kiln: { ...kiln, powerW: 2000 } })).toBeNull();
  });
});

test("a firing counts as a continuous load: 125 % of its current", () => {
  // NEC 210.19(A)(1), 210.20(A): 24 A needs a 30 A circuit and fills it to 80 %.
  expect(continuousLoad(24, 30)).toMatchObject({ circuitAtLeastA: 30, enough: true });
  expect(continuousLoad(25, 30).enough).toBe(false);
  expect(continuousLoad(25, null)).toMatchObject({ enough: null, sentence: expect.stringMatching(/electrician/) });
});
