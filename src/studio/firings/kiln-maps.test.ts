import { describe, expect, test } from "vitest";
import { kilnMaps } from "./kiln-maps.ts";
import { howFarOff, predictedAgainstActual } from "./predicted-against-actual.ts";
import { firedFiring, firedLoad, outcome } from "./testing/fired-load.ts";

const load = firedLoad();

describe("a kiln's maps", () => {
  const firing = firedFiring({
    cones: [
      { level: 0, cone: "5", bendDeg: 60, place: "" },
      { level: 1, cone: "7", bendDeg: 60, place: "" },
    ],
    outcomes: [
      outcome(0, 0, { grade: "lost", faults: ["stuck", "running"] }),
      outcome(0, 1, { grade: "second", faults: ["stuck"] }),
      outcome(0, 2),
      outcome(1, 0),
    ],
  });
  const maps = kilnMaps([firing, firedFiring({ id: "g", outcomes: [outcome(1, 0)] })], [load]);

  test("say where losses happen: every judged piece once, by height and part of the shelf", () => {
    expect(maps.all).toEqual({
      ...{ pieces: 5, good: 3, second: 1, lost: 1, badShare: 0.4 },
      faults: [
        ["stuck", 2],
        ["running", 1],
      ],
    });
    const where = maps.places.filter(({ pieces }) => pieces > 0);
    expect(where.map(({ height, part, pieces, lost }) => [height, part, pieces, lost])).toEqual([
      // Cups at −150 and −69 mm, the plate at +100; the vase on the axis, 200 of 460 mm up.
      ["bottom", "middle", 1, 0],
      ["bottom", "0°", 1, 0],
      ["bottom", "180°", 1, 1],
      ["middle", "middle", 2, 0],
    ]);
    expect(maps.places.reduce((sum, each) => sum + each.pieces, 0)).toBe(maps.all.pieces);
  });

  test("say where it runs hot, by cones; and what was foretold beside it", () => {
    const [bottom, middle, top] = maps.heat;
    expect(bottom?.overC).toBeLessThan(-20);
    expect(middle?.overC).toBeGreaterThan(5);
    expect([bottom?.shelves, middle?.shelves, top?.shelves]).toEqual([1, 1, 0]);
    expect(top).toMatchObject({ overC: null, foretoldOverC: null });
    expect(bottom?.foretoldOverC).toBeCloseTo(0, 9);
  });

  test("are there per glaze and per form", () => {
    expect(maps.byGlaze.map(({ glaze, pieces, lost }) => [glaze, pieces, lost])).toEqual([
      ["no glaze", 3, 0],
      ["moss", 2, 1],
    ]);
    expect(maps.byForm.map(({ form, pieces }) => [form, pieces])).toEqual([
      ["other", 3],
      ["vase", 2],
    ]);
    expect(kilnMaps([], []).all).toMatchObject({ pieces: 0, badShare: 0 });
  });
});

describe("foretold against actual", () => {
  const began = Date.parse("2026-11-20T20:00:00.000Z");
  const point = (hour: number, tempC: number) => ({ at: new Date(began + hour * 3_600_000).toISOString(), tempC });
  const readings = [point(0, 20), point(8, 1225), point(17, 120), point(18.5, 95), point(19, 90)];
  const firing = firedFiring({ cones: [{ level: 1, cone: "6", bendDeg: 60, place: "" }] });
  const rows = predictedAgainstActual(
    [firedFiring({ id: "g", startedAt: null, state: "planned" }), firing],
    new Map([["f", [{ firingId: "f", probe: "lid", readings }]]]),
  );

  test("hours, energy, peak, cooling and shelves, where both are known", () => {
    expect(rows).toHaveLength(1);
    expect(rows[0]).toMatchObject({
      hours: { foretold: 8, actual: 8, off: 0 },
      kWh: { foretold: 28, actual: 30, off: 2 },
      peakC: { foretold: 1222, actual: 1225, off: 3 },
      coolHours: { foretold: 12, actual: 10.5, off: -1.5 },
      calibrated: false,
    });
    // A cone bent 60° has had a few degrees less than one that is down.
    expect(rows[0]?.shelves).toHaveLength(1);
    expect(rows[0]?.shelves[0]?.off).toBeLessThan(0);
    expect(rows[0]?.shelves[0]?.off).toBeGreaterThan(-10);
    expect(rows[0]?.shelfRmsC).toBeCloseTo(Math.abs(rows[0]?.shelves[0]?.off ?? 0), 12);
  });

  test("summed up, root mean square, in percent of what was", () => {
    const off = howFarOff(rows);
    expect(off).toMatchObject({ firings: 1, hoursPercent: 0 });
    expect(off.kWhPercent).toBeCloseTo(100 / 15, 9);
    expect(off.coolPercent).toBeCloseTo(150 / 10.5, 9);
    expect(howFarOff([])).toEqual({
      firings: 0,
      hoursPercent: null,
      kWhPercent: null,
      shelfC: null,
      coolPercent: null,
    });
  });

  test("nothing is made up where nothing was read", () => {
    const [bare] = predictedAgainstActual([firedFiring({ meterReadings: [] })], new Map());
    expect(bare).toMatchObject({
      kWh: { actual: null, off: null },
      peakC: { actual: null },
      shelves: [],
      shelfRmsC: null,
    });
  });
});
