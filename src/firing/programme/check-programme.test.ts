import { expect, test } from "vitest";
import { conePlace } from "../cones/cone.ts";
import { aimedAt } from "./aim-programme.ts";
import { fastestThrough } from "./band-rate.ts";
import { checkProgramme, type ProgrammeFinding } from "./check-programme.ts";
import { programmeCurve } from "./ideal-curve.ts";
import { type Programme, readProgramme } from "./programme.ts";

const bisque = (segments: [number | null, number, number][], extra: Partial<Programme> = {}): Programme => ({
  format: "programme/1",
  name: "test",
  kind: "bisque",
  cone: "06",
  segments: segments.map(([rateCPerHour, targetC, holdMin]) => ({ rateCPerHour, targetC, holdMin })),
  ...extra,
});
const codes = (findings: readonly ProgrammeFinding[]): string[] => findings.map(({ code }) => code);

test("a good bisque passes without a word", () => {
  const checked = checkProgramme(
    bisque([
      [60, 90, 60],
      [100, 900, 0],
      [60, 997, 0],
    ]),
  );
  expect(checked.findings).toEqual([]);
  expect(checked.good).toBe(true);
  expect(checked.heatWork.coneDown).toBe("06");
});

test("says what is missing where the cone is not reached", () => {
  const { findings, good } = checkProgramme(
    bisque([
      [60, 90, 60],
      [100, 900, 0],
      [60, 985, 0],
    ]),
  );
  expect(good).toBe(false);
  expect(findings[0]).toMatchObject({ code: "does-not-reach", gravity: "fault", segment: 2 });
  expect(findings[0]?.message).toMatch(
    /Cone 06 gets \d+ % of its work: about ([4-9]|1\d) °C or a longer hold is missing/,
  );
});

test("tells of a cone overdone, naming the cone that it comes to", () => {
  const { findings } = checkProgramme(
    bisque([
      [60, 90, 60],
      [100, 900, 0],
      [60, 1031, 0],
    ]),
  );
  expect(findings[0]).toMatchObject({ code: "over-fires", gravity: "caution" });
  expect(findings[0]?.message).toMatch(/nearer cone 05/);
});

test("tells of haste through boiling and organics, and of the segment that hurries", () => {
  const hasty = bisque([
    [200, 400, 0],
    [250, 900, 0],
    [60, 997, 0],
  ]);
  const found = checkProgramme(hasty).findings;
  expect(codes(found)).toEqual(["too-fast", "too-fast"]);
  expect(found.map(({ segment }) => segment)).toEqual([0, 0]);
  expect(found[0]?.message).toMatch(/85 to 120 °C goes at 200 °C\/h when heating; at most 150 is wanted, for steam/);
  expect(codes(checkProgramme(hasty, { kind: "glaze" }).findings)).toEqual([]);
  expect(
    codes(
      checkProgramme(
        bisque([
          [80, 400, 0],
          [100, 900, 0],
          [60, 997, 0],
        ]),
        { dryness: "damp" },
      ).findings,
    ),
  ).toEqual(["too-fast"]);
});

test("thick ware wants its cooling held back through quartz and cristobalite", () => {
  const climb: [number, number, number][] = [
    [30, 90, 60],
    [60, 900, 0],
    [60, 997, 0],
  ];
  expect(codes(checkProgramme(bisque(climb), { thicknessMm: 20 }).findings)).toEqual(["too-fast", "too-fast"]);
  const guarded = bisque([...climb, [null, 620, 0], [50, 540, 0], [null, 280, 0], [45, 180, 0]]);
  expect(codes(checkProgramme(guarded, { thicknessMm: 20 }).findings)).toEqual([]);
});

test("warns of stress where a shielded length is given, and not for walls", () => {
  const programme = bisque([
    [60, 90, 60],
    [100, 900, 0],
    [60, 997, 0],
  ]);
  expect(codes(checkProgramme(programme, { shieldedLengthM: 0.1 }).findings)).toContain("stress");
  expect(codes(checkProgramme(programme, { shieldedLengthM: 0.006 }).findings)).not.toContain("stress");
});

test("counts the controller's segments, and sees a kiln that does not follow", () => {
  const programme = bisque([
    [60, 90, 60],
    [100, 900, 0],
    [60, 997, 0],
  ]);
  expect(codes(checkProgramme(programme, { mostSegments: 2 }).findings)).toEqual(["too-many-segments"]);
  const weak = (given: Programme) => {
    const curve = programmeCurve(given);
    return { minutes: curve.minutes, tempC: curve.tempC.map((celsius) => Math.min(celsius, 960)) };
  };
  expect(codes(checkProgramme(programme, { simulate: weak }).findings)).toEqual(
    expect.arrayContaining(["does-not-reach", "peak-not-reached"]),
  );
});

test("a programme from elsewhere is aimed at a cone by moving its peak alone", () => {
  const given = bisque([
    [60, 90, 60],
    [100, 900, 0],
    [60, 985, 10],
    [null, 800, 0],
  ]);
  const aimed = aimedAt(given, "06");
  const checked = checkProgramme(aimed);
  expect(checked.good).toBe(true);
  expect(checked.heatWork.cones[conePlace("06")]?.work).toBeLessThan(1.1);
  expect(aimed.segments.map(({ targetC }, i) => targetC - (given.segments[i]?.targetC ?? 0))).toEqual([
    0,
    0,
    expect.any(Number),
    0,
  ]);
});

test("a kiln is not sent above its rating", () => {
  const programme = bisque([
    [60, 90, 60],
    [100, 900, 0],
    [60, 997, 0],
  ]);
  expect(codes(checkProgramme(programme, { hottestC: 980 }).findings)).toEqual(["above-rating"]);
  expect(() => aimedAt(programme, "06", undefined, 980)).toThrow(
    /does not reach even at 980 °C, the hottest it is rated for/,
  );
  expect(() =>
    aimedAt(
      bisque([
        [60, 90, 60],
        [100, 900, 0],
        [60, 985, 240],
      ]),
      "06",
      undefined,
      980,
    ),
  ).not.toThrow();
});

test("finds the fastest ten degrees of a stretch, whichever way", () => {
  const curve = programmeCurve(
    bisque([
      [50, 560, 0],
      [200, 580, 0],
      [50, 700, 0],
      [80, 500, 0],
    ]),
  );
  expect(fastestThrough(curve, 550, 600, "heating")).toBeCloseTo(200, 6);
  expect(fastestThrough(curve, 550, 600, "cooling")).toBeCloseTo(80, 1);
  expect(fastestThrough(curve, 900, 950, "heating")).toBeNull();
});

test.each([
  [
    { rateCPerHour: -60, targetC: 500, holdMin: 0 },
    /segments\[0\].rateCPerHour: found -60; expected a rate above 0 °C\/h \(a target below/,
  ],
  [{ rateCPerHour: 0, targetC: 500, holdMin: 0 }, /found 0; expected a rate above 0/],
  [{ rateCPerHour: 60, targetC: 2232, holdMin: 0 }, /segments\[0\].targetC: found 2232; expected .* at most 1450/],
  [{ rateCPerHour: 60, targetC: 500 }, /segments\[0\].holdMin: found nothing/],
  [{ rateCPerHour: 60, targetF: 500, holdMin: 0 }, /targetF/],
  [{ rateCPerHour: 60, targetC: 500, holdMin: -1 }, /holdMin: found -1/],
  [{ rateCPerHour: 60, targetC: 500, holdMin: 0, stage: "soaking" }, /stage: found "soaking"/],
])("refuses a segment that is none, in one sentence: %#", (segment, message) => {
  expect(() => readProgramme({ format: "programme/1", name: "x", segments: [segment] })).toThrow(message);
});

test("refuses a segment that does nothing, and a programme without any", () => {
  const twice = { rateCPerHour: 60, targetC: 500, holdMin: 0 };
  expect(() => readProgramme({ format: "programme/1", name: "x", segments: [twice, twice] })).toThrow(
    /no hold; expected another target/,
  );
  expect(() => readProgramme({ format: "programme/1", name: "x", segments: [] })).toThrow(
    /segments: found a list of 0; expected at least 1/,
  );
});
