import { expect, test } from "vitest";
import { CONES, ladderOf } from "../../../firing/cones/cone.ts";
import { equivalentC } from "../../../firing/heat-work/ladder-position.ts";
import { coneSays } from "../../../studio/firings/level-heat.ts";
import { bendWords, conesInWords, foretoldBendDeg, stepped } from "./bend-words.ts";
import { coneSet, conesAfter, meantCone, shelfCones } from "./cone-set.ts";
import { bendOfTip, CONE_TALL, coneOutline, coneTip, readable } from "./cone-shape.ts";

test("an hour of the clock is fifteen degrees, from standing to down (common practice, no source)", () => {
  expect([0, 15, 30, 45, 60, 75, 90].map(bendWords)).toEqual([
    "standing",
    "one o’clock",
    "two o’clock",
    "three o’clock",
    "four o’clock",
    "five o’clock",
    "down",
  ]);
  // A cone leans 8° as it is set.
  expect(bendWords(8)).toBe("standing");
  expect(bendWords(85)).toBe("nearly down");
});

test("steps land on the hours and stop at standing and down", () => {
  expect([stepped(0, 1), stepped(20, 1), stepped(20, -1), stepped(15, -1)]).toEqual([15, 30, 15, 0]);
  expect([stepped(0, -1), stepped(90, 1), stepped(85, 1)]).toEqual([0, 90, 90]);
});

test("cones are told coolest first, as potters say it", () => {
  const cones = [
    { cone: "7", bendDeg: 45 },
    { cone: "8", bendDeg: 0 },
    { cone: "6", bendDeg: 90 },
  ] as const;
  expect(conesInWords(cones)).toBe("6 down, 7 at three o’clock, 8 standing");
  expect(conesInWords([])).toBe("");
});

test("guide, firing and guard cone stand a whole cone apart", () => {
  expect(coneSet("6").map(({ cone }) => cone)).toEqual(["5", "6", "7"]);
  expect(coneSet("1").map(({ cone }) => cone)).toEqual(["01", "1", "2"]);
  expect(coneSet("022").map(({ part }) => part)).toEqual(["firing", "guard"]);
  expect(coneSet("5.5").map(({ cone }) => cone)).toEqual(["5", "5.5", "6"]);
});

test("the cone meant is the foretelling's, else the programme's, else nobody knows", () => {
  const programme = { format: "programme/1", name: "p", segments: [], cone: "04" } as const;
  expect(meantCone({ programme: { ...programme, segments: [] } })).toBe("04");
  expect(meantCone({ programme: null })).toBeNull();
});

test("a shelf shows its set, what was seen of it, and any other cone seen there", () => {
  const seen = [
    { level: 1, cone: "6", bendDeg: 80, place: "" },
    { level: 1, cone: "6", bendDeg: 60, place: "at the back" },
    { level: 0, cone: "5", bendDeg: 90, place: "" },
  ] as const;
  expect(shelfCones(seen, 1, "6").map(({ cone, bendDeg, part }) => [cone, bendDeg, part])).toEqual([
    ["5", null, "guide"],
    ["6", 80, "firing"],
    ["6", 60, null],
    ["7", null, "guard"],
  ]);
});

test("seeing a cone changes that one alone; not seen after all takes it out", () => {
  const first = conesAfter([], 1, { cone: "6", place: "" }, 75);
  const second = conesAfter(first, 0, { cone: "5", place: "" }, 90);
  expect(second.map(({ level, cone }) => [level, cone])).toEqual([
    [0, "5"],
    [1, "6"],
  ]);
  expect(conesAfter(second, 1, { cone: "6", place: "" }, 60).map(({ bendDeg }) => bendDeg)).toEqual([90, 60]);
  expect(conesAfter(second, 1, { cone: "6", place: "" }, null)).toHaveLength(1);
});

test("a drawn cone's tip leans as far as it is bent, and lies on the plaque when it is down", () => {
  for (const bend of [10, 30, 45, 60, 90]) {
    const [x, y] = coneTip(bend);
    expect(bendOfTip(x, y)).toBeCloseTo(bend, 6);
  }
  expect(coneTip(90)[1]).toBeCloseTo(0, 6);
  // An arc keeps its length: down, it is half a circle.
  expect(coneTip(90)[0]).toBeCloseTo((2 * CONE_TALL) / Math.PI, 6);
  expect(coneOutline(45).flat().every(Number.isFinite)).toBe(true);
});

test("a finger behind the cone or far below it bends it no further than may be", () => {
  expect(bendOfTip(-20, 30)).toBe(0);
  expect(bendOfTip(-20, -5)).toBe(0);
  expect(bendOfTip(30, -20)).toBe(90);
  expect(readable(43)).toBe(45);
});

test("what is foretold of a cone says the heat work it was foretold from", () => {
  // The other way round is the studio's own reading of a bent cone, by the same law of bending.
  let checked = 0;
  for (const cone of CONES) {
    const ladder = ladderOf(cone) - 0.2;
    if (ladder < 0) continue;
    const said = coneSays({ cone, bendDeg: foretoldBendDeg(ladder, cone) });
    if (said.bound !== "about") continue;
    expect(said.heatC).toBeCloseTo(equivalentC(ladder), 1);
    checked += 1;
  }
  expect(checked).toBeGreaterThan(CONES.length - 4);
  expect(foretoldBendDeg(ladderOf("6"), "6")).toBe(90);
  expect(foretoldBendDeg(ladderOf("6"), "10")).toBeLessThan(12);
});
