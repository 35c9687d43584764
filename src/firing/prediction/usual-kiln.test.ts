import { expect, test } from "vitest";
import { workOf } from "../heat-work/questions.ts";
import { programmeCurve } from "../programme/ideal-curve.ts";
import { writeProgramme } from "../programme/write-programme.ts";
import { usualKilnCurve } from "./usual-kiln.ts";

test.each([
  ["6", "glaze"],
  ["04", "bisque"],
] as const)(
  "a cone %s %s programme aimed in a usual kiln lays its cone down there, and not a degree too high",
  (cone, kind) => {
    const { programme, work } = writeProgramme({ cone, kind, pace: "medium", simulate: usualKilnCurve });
    expect(workOf(cone, usualKilnCurve(programme))).toBeCloseTo(work, 9);
    expect(work).toBeGreaterThanOrEqual(1);
    // A degree is worth some 4 % of a cone's work near its end (heat-work/cone-kinetics.ts).
    expect(work).toBeLessThan(1.06);
  },
);

test("light bricks cool fast at first: even cooling would add more work, so aiming by it would stop early", () => {
  const { programme } = writeProgramme({ cone: "6", kind: "glaze", pace: "medium", simulate: usualKilnCurve });
  expect(workOf("6", programmeCurve(programme))).toBeGreaterThan(workOf("6", usualKilnCurve(programme)) + 0.03);
});
