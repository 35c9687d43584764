import { describe, expect, test } from "vitest";
import { PROGRAMME_FORMAT, type Programme } from "../programme/programme.ts";
import type { ThermalKiln, ThermalLoad } from "../thermal/kiln-network.ts";
import { evennessAdvice } from "./advice.ts";
import { programmeHeldAlike } from "./held-alike.ts";
import { type PredictInput, predict } from "./predict.ts";

const kiln: ThermalKiln = {
  floorAreaM2: 0.14,
  wallRoundM: 1.36,
  depthM: 0.41,
  wall: [{ material: "brick 23", thicknessM: 0.064 }],
  powerW: 6000,
  leakWattsPerK: 0.5,
  bandShares: [1, 1, 1],
  wallFactor: 1,
  roomC: 20,
};
const level = (shelfTopM: number, wareKg: number) => ({
  shelfTopM,
  shelfThicknessM: 0.016,
  shelfAreaM2: 0.11,
  openAreaM2: 0.03,
  wareKg,
  wareThicknessM: 0.006,
  postsKg: 0.6,
});
const load: ThermalLoad = { levels: [level(0.04, 4), level(0.16, 4), level(0.29, 4)], green: false, massFactor: 1 };
const programme: Programme = {
  format: PROGRAMME_FORMAT,
  name: "cone 6",
  segments: [
    { rateCPerHour: 150, targetC: 1100, holdMin: 0 },
    { rateCPerHour: 60, targetC: 1215, holdMin: 0 },
  ],
};
const adviceOn = (input: PredictInput) => evennessAdvice(input, predict(input));

describe("advice on evenness", () => {
  test("a kiln whose top elements are weak is told to strengthen them, and is far more even for it", () => {
    const weakTop = adviceOn({ kiln: { ...kiln, bandShares: [1.2, 1.1, 0.7] }, load, programme });
    expect(weakTop.coolest).toBe(2);
    const balance = weakTop.changes.find((each) => each.kind === "element-balance");
    expect(balance?.sentence).toMatch(/element band 3 from the floor \d+ % more/);
    expect(balance?.spreadC).toBeLessThan(weakTop.spreadC / 2);
  });

  test("what is claimed is what a prediction of the changed input gives", () => {
    const advice = adviceOn({ kiln: { ...kiln, bandShares: [0.7, 1, 1.3] }, load, programme });
    expect(advice.changes.length).toBeGreaterThan(0);
    for (const change of advice.changes) {
      const again = predict(change.input).levels.map((each) => each.offsetC);
      expect(change.offsetsC).toEqual(again);
      expect(Math.max(...again) - Math.min(...again)).toBeCloseTo(change.spreadC, 9);
      expect(advice.spreadC - change.spreadC).toBeCloseTo(change.gainC, 9);
    }
  });

  test("a heavy level far behind in a fast firing is helped by a hold or a slower end", () => {
    const heavy = { ...load, levels: [level(0.04, 2), level(0.16, 14), level(0.29, 2)] };
    const fast: Programme = {
      ...programme,
      segments: [{ rateCPerHour: 400, targetC: 1060, holdMin: 0 }],
    };
    const advice = adviceOn({ kiln: { ...kiln, powerW: 12000 }, load: heavy, programme: fast });
    expect(advice.coolest).toBe(1);
    const kinds = advice.changes.map((each) => each.kind);
    expect(kinds.includes("hold") || kinds.includes("slower-end")).toBe(true);
  });

  test("ware that may not be moved is not", () => {
    const uneven = { ...load, levels: [level(0.04, 9), level(0.16, 2), level(0.29, 1)] };
    const input = { kiln, load: uneven, programme };
    const advice = evennessAdvice(input, predict(input), () => false);
    expect(advice.changes.some((each) => each.kind === "move-ware")).toBe(false);
    expect(advice.inVain).not.toContain("trading the ware of two levels");
  });

  test("one level, and a kiln that never gets there, are not advised on", () => {
    const one = adviceOn({ kiln, load: { ...load, levels: [level(0.04, 4)] }, programme });
    expect(one).toMatchObject({ changes: [], coolest: null });
    const weak = adviceOn({ kiln: { ...kiln, powerW: 2500 }, load, programme });
    expect(weak.changes).toEqual([]);
    expect(weak.sentence).toMatch(/does not reach/);
  });
});

test("a longer hold keeps the probe's heat work within a degree by lowering the peak", () => {
  const input = { kiln, load, programme };
  const before = predict(input);
  const held = programmeHeldAlike(input, before, { addedHoldMin: 30, endRateShare: 1 });
  expect(held.segments[1]?.holdMin).toBe(30);
  expect(held.segments[1]?.targetC).toBeLessThan(1215);
  expect(Math.abs(predict({ ...input, programme: held }).probe.equivalentC - before.probe.equivalentC)).toBeLessThan(1);
});
