import { describe, expect, test } from "vitest";
import { readyMadeKiln } from "../../../kiln/ready-made-kilns.ts";
import { fittingOf, fittingsOf, withFittingAt } from "./fitting.ts";

const { kiln } = readyMadeKiln("eight-sided")!;

describe("moving a fitting on the drawing", () => {
  test("moves that one and no other, round the wall or up it", () => {
    const moved = withFittingAt(kiln, { kind: "spyhole", index: 1 }, { angleDeg: -15 });
    expect(moved.spyholes?.[1]).toEqual({ ...kiln.spyholes?.[1], angleDeg: 345 });
    expect(moved.spyholes?.[0]).toBe(kiln.spyholes?.[0]);
    expect(moved.probes).toBe(kiln.probes);
    expect(withFittingAt(kiln, { kind: "probe", index: 0 }, { heightMm: 120 }).probes?.[0]?.heightMm).toBe(120);
  });

  test("never takes it out of the chamber", () => {
    const at = (heightMm: number) =>
      withFittingAt(kiln, { kind: "probe", index: 0 }, { heightMm }).probes?.[0]?.heightMm;
    expect([at(-40), at(9000)]).toEqual([0, kiln.chamber.depthMm]);
  });

  test("every fitting is listed once and found again", () => {
    expect(fittingsOf(kiln).map((each) => fittingOf(kiln, each)?.name)).toEqual([
      "probe",
      "lower spyhole",
      "upper spyhole",
    ]);
    expect(fittingOf(kiln, { kind: "probe", index: 4 })).toBeUndefined();
  });
});
