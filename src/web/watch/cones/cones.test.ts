import { describe, expect, test } from "vitest";
import { curveThrough } from "../../../firing/heat-work/curve.ts";
import { heatWork } from "../../../firing/heat-work/heat-work.ts";
import type { WatchedHeat } from "../../../studio/api/watch-contract.ts";
import { conePack } from "./cone-pack.ts";
import { coneShape } from "./cone-shape.ts";

const heatAt = (tempC: number): { heat: WatchedHeat; all: ReturnType<typeof heatWork> } => {
  const all = heatWork(
    curveThrough([
      [0, 20],
      [tempC - 20, tempC],
    ]),
  );
  const { ladder, coneDown, next, towardNext } = all;
  return { heat: { level: null, ladder, coneDown, next, towardNext, cones: [] }, all };
};

describe("which cones are drawn", () => {
  test("far below the one waited for: those about where it stands, and that one", () => {
    // At 60 °C/h cone 04 is down at 1063 °C and cone 03 at 1086 (the published table).
    const names = conePack(heatAt(1070).heat, "6").map(({ cone }) => cone);
    expect(names).toEqual(["05", "04", "03", "02", "6"]);
  });

  test("the one apart says so", () => {
    expect(conePack(heatAt(1070).heat, "6").map(({ isApart }) => isApart)).toEqual([false, false, false, false, true]);
  });

  test("near it: the pack with the one wanted and the one after", () => {
    expect(conePack(heatAt(1215).heat, "6").map(({ cone }) => cone)).toEqual(["3", "4", "5", "6", "7"]);
  });

  test("past it: what comes next still shows", () => {
    expect(conePack(heatAt(1262).heat, "6").map(({ cone }) => cone)).toContain("9");
  });

  test("at the ends of the ladder there are still five", () => {
    expect(conePack(heatAt(300).heat, null)).toHaveLength(5);
    expect(conePack(heatAt(1420).heat, "14")).toHaveLength(5);
  });
});

test("bends by the ladder alone come near those reckoned from the curve itself", () => {
  for (const tempC of [900, 1070, 1215]) {
    const { heat, all } = heatAt(tempC);
    for (const { cone, bendDeg } of conePack(heat, "6")) {
      const reckoned = all.cones.find((each) => each.cone === cone)?.bendDeg as number;
      // Within a few degrees of bend: nothing that a drawing of a cone shows.
      expect(Math.abs(bendDeg - reckoned)).toBeLessThan(8);
    }
  }
});

test("a bend that the studio says is drawn as it says", () => {
  const heat = { ...heatAt(1215).heat, cones: [{ cone: "6", bendDeg: 41, downAtMin: null }] };
  expect(conePack(heat, "6").find(({ cone }) => cone === "6")?.bendDeg).toBe(41);
});

describe("a cone's shape", () => {
  test("its tip sinks as it bends, and lies by its foot when it is down", () => {
    const heights = [8, 20, 45, 70, 90].map((bend) => -coneShape(bend).tip[1]);
    heights.slice(1).forEach((height, i) => {
      expect(height).toBeLessThan(heights[i] as number);
    });
    expect(heights[0]).toBeGreaterThan(40);
    expect(heights.at(-1)).toBeLessThan(15);
  });

  test("upright it leans by eight degrees, and never more than down", () => {
    expect(coneShape(0)).toEqual(coneShape(8));
    expect(coneShape(120)).toEqual(coneShape(90));
  });
});
