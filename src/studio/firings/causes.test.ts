import { describe, expect, test } from "vitest";
import { CONE_TABLE } from "../../firing/cones/cone-table.ts";
import * as sample from "../../store/testing/sample-records.ts";
import { FAULTS } from "../records/faults.ts";
import { type Cause, causesOf } from "./causes.ts";
import { CAUSES } from "./causes-data.ts";
import { firingPace } from "./firing-pace.ts";
import { coneSays, levelHeats } from "./level-heat.ts";
import { pieceFacts } from "./piece-facts.ts";
import { piecePlace } from "./piece-place.ts";
import { firedFiring, firedLoad } from "./testing/fired-load.ts";

const load = firedLoad();
const cup = { level: 0, placement: 0 };
const shown = (causes: readonly Cause[]) =>
  causes.filter(({ standing }) => standing === "shown").map(({ cause }) => cause);

describe("the causes of a fault", () => {
  test("are known for every fault, each with its reasoning, what to try and where it is from", () => {
    expect(new Set(CAUSES.map(({ fault }) => fault))).toEqual(new Set(FAULTS));
    for (const { cause, why, tryNext, source } of CAUSES) {
      for (const text of [cause, why, tryNext]) expect(text, cause).toMatch(/^\p{Lu}.*\p{L}/u);
      expect(source, cause).toMatch(/common practice|from memory|Fortuna|Antoine/);
    }
  });

  test("begin with what this firing shows, with its numbers; what its readings speak against comes last", () => {
    // Cone 6 lies flat from 1222 °C at 60 °C/h, cone 7 from 1239 (self-supporting large cones; CONE_TABLE).
    const hot = firedFiring({ cones: [{ level: 0, cone: "7", bendDeg: 88, place: "" }] });
    const causes = causesOf("running", pieceFacts({ firing: hot, load, readings: [] }, cup));
    expect(shown(causes)).toEqual(["The shelf ran hot"]);
    expect(causes[0]?.because).toMatch(
      /^This shelf ran 1[67] °C hotter than cone 6 wants, by its witness cones\. Each/,
    );
    const cool = firedFiring({ cones: [{ level: 0, cone: "5", bendDeg: 80, place: "" }] });
    const unlikely = causesOf("running", pieceFacts({ firing: cool, load }, cup)).filter(
      ({ standing }) => standing === "unlikely",
    );
    expect(unlikely.map(({ cause }) => cause)).toContain("The shelf ran hot");
    expect(causesOf("running", pieceFacts({ firing: cool, load }, cup)).at(-1)?.standing).toBe("unlikely");
  });

  test("know a glaze's own range, and a running glaze without its cookie", () => {
    const glaze = { ...sample.glaze(), cones: { coolest: "4" as const, hottest: "5" as const } };
    const facts = pieceFacts({ firing: firedFiring(), load, glaze }, cup);
    // Cone 5 is 1186 °C and cone 6 is 1222 in the same table.
    expect(causesOf("running", facts)[0]?.because).toMatch(/got 36 °C more than cone 5, the hottest rain over slate/);
    expect(shown(causesOf("running", facts))).toContain("A glaze that runs, without a cookie");
  });

  test("see neighbours, walls and shelves over a piece", () => {
    expect(piecePlace(load, cup)).toMatchObject({ neighbour: "cup", underShelf: true, levels: 2 });
    // Axes 81 mm apart, each 40 mm in radius; the wall 215 mm from the axis.
    expect(piecePlace(load, cup)?.neighbourMm).toBeCloseTo(1, 9);
    expect(piecePlace(load, cup)?.wallMm).toBeCloseTo(215 - 150 - 40, 9);
    expect(piecePlace(load, cup)?.edgeMm).toBeCloseTo(195 - 150 - 40, 9);
    const facts = pieceFacts({ firing: firedFiring(), load }, cup);
    expect(causesOf("stuck", facts)[0]?.because).toMatch(/^Cup stood 1 mm away/);
    expect(shown(causesOf("kiln debris", facts))).toHaveLength(2);
    const vase = pieceFacts({ firing: firedFiring(), load }, { level: 1, placement: 0 });
    expect(shown(causesOf("kiln debris", vase))).toEqual([]);
  });

  test("read the cooling off the log: fast through 573 °C, slow through 226 °C, opened hot", () => {
    const began = Date.parse("2026-11-20T20:00:00.000Z");
    // A hundred and fifty an hour up; down at 240 °C/h to 400 °C, then at 40 °C/h.
    const tempAt = (hour: number): number =>
      hour <= 8 ? 20 + 150 * hour : Math.max(1220 - 240 * (hour - 8), 400 - 40 * (hour - 8 - 820 / 240));
    const readings = Array.from({ length: 19 * 12 }, (_, i) => ({
      at: new Date(began + i * 300_000).toISOString(),
      tempC: tempAt(i / 12),
    }));
    const firing = firedFiring({ endedAt: "2026-11-21T15:00:00.000Z" });
    const facts = pieceFacts({ firing, load, readings: [{ firingId: "f", probe: "lid", readings }] }, cup);
    expect(facts.pace?.quartzCPerHour).toBeCloseTo(240, 6);
    expect(facts.pace?.cristobaliteCPerHour).toBeCloseTo(40, 6);
    const causes = causesOf("dunting", facts);
    expect(causes[0]?.because).toMatch(/^It cooled at 240 °C\/h through 573 °C/);
    const cristobalite = causes.find(({ cause }) => /226/.test(cause));
    expect(cristobalite?.standing).toBe("unlikely");
    expect(facts.openedAtC).toBeCloseTo(tempAt(227 / 12), 6);
    expect(causesOf("crazing", facts).find(({ cause }) => cause === "Opened while hot")?.standing).toBe("unlikely");
    const hot = { ...facts, openedAtC: 240 };
    expect(shown(causesOf("crazing", hot))).toEqual(["Opened while hot"]);
    expect(shown(causesOf("dunting", hot))).toEqual([
      "Cooled too fast through 573 °C",
      "Cooled too fast through 226 °C, or opened hot",
      "Uneven heat from one side",
    ]);
  });

  test("by what was foretold where nothing was read, set off by a comma", () => {
    const told = firedFiring();
    const curve: [number, number][] = [
      [0, 20],
      [480, 1220],
      [780, 20],
    ];
    const foretold = { ...(told.foretold as NonNullable<typeof told.foretold>), curve };
    const [first] = causesOf("dunting", pieceFacts({ firing: { ...told, foretold }, load }, cup));
    expect(first?.because).toMatch(/^It cooled at 240 °C\/h through 573 °C, where quartz turns, as foretold\./);
  });

  test("say nothing of a firing of which nothing is known", () => {
    const { foretold: _, ...bare } = firedFiring();
    const facts = pieceFacts({ firing: bare, load: null }, cup);
    expect(facts).toMatchObject({ place: null, heat: null, pace: null, paceFrom: null });
    for (const fault of FAULTS) for (const { standing } of causesOf(fault, facts)) expect(standing).toBe("open");
  });
});

describe("what a shelf got", () => {
  test("a cone just down has had what the published table says at 60 °C/h", () => {
    for (const { cone, at60C } of CONE_TABLE.filter((each) => !each.cone.endsWith(".5"))) {
      // 88° is counted as down; the last two degrees are half a degree Celsius of heat work at most.
      expect(Math.abs(coneSays({ cone, bendDeg: 88 }).heatC - at60C), cone).toBeLessThan(1);
    }
  });

  test("a flat cone says at least, a standing one at most; between them the shelf is known", () => {
    const cones = (...seen: readonly [cone: "5" | "6" | "7", bendDeg: number][]) =>
      firedFiring({ cones: seen.map(([cone, bendDeg]) => ({ level: 1, cone, bendDeg, place: "" })) });
    const heat = (firing: ReturnType<typeof firedFiring>) => levelHeats(firing)[1];
    expect(heat(cones(["6", 90]))).toMatchObject({ from: "cones", bound: "at least" });
    expect(heat(cones(["7", 8]))).toMatchObject({ bound: "at most" });
    const between = heat(cones(["6", 90], ["7", 8]));
    expect(between?.bound).toBe("about");
    expect(between?.heatC).toBeGreaterThan(1205);
    expect(between?.heatC).toBeLessThan(1239);
    expect(levelHeats(firedFiring())[0]).toMatchObject({ from: "foretold", overC: 0 });
  });
});

test("a pace is measured where it is, and null where the curve does not go", () => {
  const minutes = Float64Array.from({ length: 601 }, (_, i) => i);
  const tempC = minutes.map((minute) => 20 + minute * 2);
  const pace = firingPace({ minutes, tempC });
  for (const rate of [
    pace.dryingCPerHour,
    pace.organicsCPerHour,
    pace.chemicalWaterCPerHour,
    pace.lastHundredCPerHour,
  ]) {
    expect(rate).toBeCloseTo(120, 6);
  }
  expect(pace).toMatchObject({ quartzCPerHour: null, cristobaliteCPerHour: null, crystalsCPerHour: null, peakC: 1220 });
});
