import { expect, test } from "vitest";
import { CONES } from "../cones/cone.ts";
import { FIRING_KINDS } from "../cones/firing-kind.ts";
import { workOf } from "../heat-work/questions.ts";
import { checkProgramme } from "./check-programme.ts";
import { ENDINGS } from "./draft-programme.ts";
import { IDEAL_KILN, programmeCurve, programmeHours } from "./ideal-curve.ts";
import { keyInTable, programmeKeyedIn } from "./key-in.ts";
import { DRYNESSES, PACES } from "./pace.ts";
import { type Programme, readProgramme } from "./programme.ts";
import { type ProgrammeWish, writeProgramme } from "./write-programme.ts";

const WISHES: ProgrammeWish[] = PACES.flatMap((pace) => [
  { cone: "04", kind: "bisque", pace },
  { cone: "06", kind: "bisque", pace, thicknessMm: 20 },
  { cone: "6", kind: "glaze", pace },
  { cone: "6", kind: "glaze", pace, ending: "slow-cool" },
  { cone: "10", kind: "glaze", pace, ending: "drop-and-hold", holdMin: 30 },
  { cone: "04", kind: "glaze", pace, ending: "slow-cool" },
  { cone: "5.5", kind: "once-fired", pace, dryness: "dry-to-touch" },
  { cone: "018", kind: "lustre", pace },
]);

test.each(WISHES)("reaches cone $cone, $kind $pace, by less than two degrees of heat work too much", (wish) => {
  const { programme, work } = writeProgramme(wish);
  expect(work).toBeGreaterThanOrEqual(1);
  const cooler = programme.segments.map((segment) => {
    return segment.stage === "last hundred" ? { ...segment, targetC: segment.targetC - 2 } : segment;
  });
  expect(workOf(wish.cone, programmeCurve({ segments: cooler }))).toBeLessThan(1);
  expect(readProgramme(JSON.parse(JSON.stringify(programme)))).toEqual(programme);
});

test.each(WISHES)("its own check finds nothing to say against cone $cone, $kind $pace", (wish) => {
  const { programme } = writeProgramme(wish);
  const { findings } = checkProgramme(programme, { thicknessMm: wish.thicknessMm, dryness: wish.dryness });
  expect(findings.filter(({ gravity }) => gravity !== "note")).toEqual([]);
});

test("every segment says what it is for, and why", () => {
  for (const wish of WISHES) {
    for (const segment of writeProgramme(wish).programme.segments) {
      expect(segment.stage).toBeDefined();
      expect(segment.reason?.length ?? 0).toBeGreaterThan(10);
    }
  }
});

test("keyed in as whole °C or °F it still reaches the cone, at no faster rate", () => {
  for (const wish of WISHES) {
    const { programme } = writeProgramme(wish);
    for (const units of ["C", "F"] as const) {
      const keyed = programmeKeyedIn(programme, units);
      expect(workOf(wish.cone, programmeCurve(keyed))).toBeGreaterThanOrEqual(1);
      keyed.segments.forEach((segment, i) => {
        const asked = programme.segments[i]?.rateCPerHour ?? null;
        if (asked !== null) expect(segment.rateCPerHour).toBeLessThanOrEqual(asked + 1e-9);
      });
      for (const line of keyInTable(programme, units)) {
        expect(Number.isInteger(line.target)).toBe(true);
        expect(line.rate === null || Number.isInteger(line.rate)).toBe(true);
      }
    }
  }
});

test("a controller of few segments gets a programme that is slower, never faster, and still reaches the cone", () => {
  const wish = { cone: "04", kind: "bisque", pace: "medium" } as const;
  const whole = writeProgramme(wish).programme;
  const few = writeProgramme({ ...wish, mostSegments: 4 }).programme;
  expect(few.segments.length).toBe(4);
  expect(programmeHours(few).heating).toBeGreaterThan(programmeHours(whole).heating);
  expect(checkProgramme(few, { mostSegments: 4 }).good).toBe(true);
  const rateAt = (programme: Programme, celsius: number): number => {
    return programme.segments.find((segment) => segment.targetC > celsius)?.rateCPerHour ?? 0;
  };
  for (let celsius = 20; celsius < 1040; celsius += 10) {
    expect(rateAt(few, celsius)).toBeLessThanOrEqual(rateAt(whole, celsius));
  }
  expect(() => writeProgramme({ ...wish, mostSegments: 2 })).toThrow(/mostSegments: found 2; expected at least 3/);
});

test("a longer hold lowers the peak, and thick ware takes longer", () => {
  const wish = { cone: "6", kind: "glaze", pace: "medium" } as const;
  expect(writeProgramme({ ...wish, holdMin: 60 }).peakC).toBeLessThan(
    writeProgramme({ ...wish, holdMin: 0 }).peakC - 10,
  );
  const thin = writeProgramme({ cone: "06", kind: "bisque", pace: "medium" }).programme;
  const thick = writeProgramme({ cone: "06", kind: "bisque", pace: "medium", thicknessMm: 25 }).programme;
  expect(programmeHours(thick).heating).toBeGreaterThan(programmeHours(thin).heating * 1.3);
  const damp = writeProgramme({ cone: "06", kind: "bisque", pace: "medium", dryness: "damp" });
  expect(damp.programme.segments[0]?.holdMin).toBeGreaterThan(240);
  expect(damp.notes.join()).toMatch(/dried in the air/);
});

test("aims with the kiln it is given: one that lags is sent higher, one too weak is refused", () => {
  const wish = { cone: "6", kind: "glaze", pace: "medium" } as const;
  const short = (by: number) => (programme: Programme) => {
    const curve = programmeCurve(programme);
    return { minutes: curve.minutes, tempC: curve.tempC.map((celsius) => (celsius > 1000 ? celsius - by : celsius)) };
  };
  expect(writeProgramme({ ...wish, simulate: short(8) }).peakC - writeProgramme(wish).peakC).toBe(8);
  const weak = (programme: Programme) => {
    const curve = programmeCurve(programme);
    return { minutes: curve.minutes, tempC: curve.tempC.map((celsius) => Math.min(celsius, 1120)) };
  };
  expect(() => writeProgramme({ ...wish, simulate: weak })).toThrow(/cone 6, which this kiln does not reach/);
});

test("every wish that is offered can be written, whatever its cone", () => {
  let written = 0;
  for (const kind of FIRING_KINDS) {
    for (const cone of CONES.filter((_, i) => i % 3 === 0)) {
      for (const ending of ENDINGS) {
        try {
          expect(
            writeProgramme({ cone, kind, pace: "medium", ending, guardedCooling: true, dryness: DRYNESSES[1] }).work,
          ).toBeGreaterThanOrEqual(1);
          written++;
        } catch (error) {
          expect(String(error)).toMatch(/cone \S+ for a .* firing; expected cones/);
        }
      }
    }
  }
  expect(written).toBeGreaterThan(50);
});

test.each([
  [{ cone: "6", kind: "lustre", pace: "slow" }, /cone 6 for a lustre firing; expected cones 022 to 015/],
  [{ cone: "6", kind: "glaze", pace: "slow", holdMin: -5 }, /holdMin: found -5; expected 0 to 600 minutes/],
  [{ cone: "06", kind: "bisque", pace: "slow", thicknessMm: 200 }, /thicknessMm: found 200/],
  [{ cone: "06", kind: "bisque", pace: "slow", lastRateCPerHour: 5 }, /lastRateCPerHour: found 5; expected 15 to 400/],
] as const)("refuses a wish that cannot be: %#", (wish, message) => {
  expect(() => writeProgramme(wish)).toThrow(message);
});

test("an ideal kiln cools no faster than its bricks, and a slow cooling is held back", () => {
  const up = { rateCPerHour: 100, targetC: 1200, holdMin: 0 };
  const free = programmeHours({ segments: [up] });
  expect(free.untilCool - free.heating).toBeCloseTo(4 * Math.log(1180 / 30), 1);
  const hurried = programmeHours({ segments: [up, { rateCPerHour: 1000, targetC: 50, holdMin: 0 }] });
  expect(hurried.untilCool).toBeCloseTo(free.untilCool, 6);
  const held = programmeHours({ segments: [up, { rateCPerHour: 50, targetC: 700, holdMin: 0 }] });
  expect(held.programmed - held.heating).toBeCloseTo(10, 6);
  expect(programmeHours({ segments: [{ ...up, rateCPerHour: null }] }).heating).toBeCloseTo(
    1180 / IDEAL_KILN.fastestCPerHour,
    9,
  );
});
