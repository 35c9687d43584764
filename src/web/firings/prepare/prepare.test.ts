import { describe, expect, test } from "vitest";
import { writeProgramme } from "../../../firing/programme/write-programme.ts";
import { batch, load } from "../../loads/testing/example-load.ts";
import { firing, prediction } from "../testing/example-firing.ts";
import { apartC, expectedChart, isOtherThan, levelCone, offsetWords } from "./expect-words.ts";
import { firedLately } from "./fired-lately.ts";
import { usualWish } from "./usual-wish.ts";

describe("what a load asks of its programme", () => {
  test("the coolest of its cones, for ware can be fired again but not less", () => {
    const mugs = batch("mug", { ware: { name: "mug", count: 4, diameterMm: 80, heightMm: 90, cone: "6" } });
    const bowls = batch("bowl", { ware: { name: "bowl", count: 4, diameterMm: 80, heightMm: 90, cone: "5" } });
    const mixed = load("l", [mugs, bowls], ["mug", "bowl"]);
    expect(usualWish(mixed, [mugs, bowls])).toEqual({ cone: "5", kind: "glaze", pace: "medium" });
  });

  test("what is usual for its kind where it says nothing, or nothing that is a cone", () => {
    const raw = batch("raw", {
      ...{ stage: "greenware", firingKind: "bisque" },
      ware: { name: "raw", count: 4, diameterMm: 80, heightMm: 90, cone: "hot" },
    });
    // Bisque at cone 04: common practice, no source.
    expect(usualWish(load("l", [raw], ["raw"]), [raw])).toEqual({ cone: "04", kind: "bisque", pace: "medium" });
  });
});

test("programmes fired lately in this kiln, each but once", () => {
  const { programme } = writeProgramme({ cone: "6", kind: "glaze", pace: "fast" });
  const slow = writeProgramme({ cone: "6", kind: "glaze", pace: "slow" }).programme;
  const fired = (id: string, day: number, written: typeof programme, kilnId = "k1") =>
    firing(id, {
      ...{ kilnId, state: "finished", startedAt: `2026-11-0${day}T08:00:00.000Z` },
      programme: JSON.parse(JSON.stringify(written)),
    });
  const all = [fired("a", 1, programme), fired("b", 3, slow), fired("c", 5, programme), fired("d", 6, slow, "k2")];
  expect(firedLately(all, "k1").map(({ id }) => id)).toEqual(["c", "b"]);
});

describe("what to expect, in words", () => {
  const level = { level: 0, peakC: 1220, ladder: 27.2, offsetC: -6, towardNext: 0.194 } as const;

  test("a level's cones", () => {
    expect(levelCone({ ...level, coneDown: "6", next: "7" })).toBe("cone 6 down, 19 % toward 7");
    expect(levelCone({ ...level, coneDown: null, next: "022" })).toBe("no cone down");
  });

  test("differences in her own degrees, without the offset of the scale", () => {
    expect(offsetWords(-10, "C")).toBe("10 °C cooler");
    expect(offsetWords(10, "F")).toBe("18 °F hotter");
    expect(offsetWords(0.3, "C")).toBe("as at the probe");
    const levels = [level, { ...level, offsetC: 6 }].map((each) => ({ ...each, coneDown: null, next: null }));
    expect(apartC({ levels })).toBe(12);
    expect(apartC({ levels: levels.slice(1) })).toBeNull();
  });

  test("a firing prepared before its load was changed is told from one that stands", () => {
    const now = prediction();
    expect(isOtherThan({ hours: 10, kWh: 20.01, levels: [] }, now)).toBe(false);
    expect(isOtherThan({ hours: 10, kWh: 21, levels: [] }, now)).toBe(true);
    expect(isOtherThan({ hours: 9, kWh: 20, levels: [] }, now)).toBe(true);
  });

  test("the chart marks the last cones to fall, shut-off, and in its table when it has cooled", () => {
    const chart = expectedChart(writeProgramme({ cone: "6", kind: "glaze", pace: "medium" }).programme, prediction());
    expect(chart.marks.filter(({ kind }) => kind === "cone")).toHaveLength(4);
    expect(chart.tableMarks.find(({ what }) => what === "The lid may be lifted")?.atMin).toBe(20 * 60);
    // It takes over a week to 50 °C: nothing is promised.
    expect(chart.tableMarks.some(({ what }) => what.includes("bare hands"))).toBe(false);
    expect(chart.untilMin).toBeLessThanOrEqual(600 * 1.9);
  });
});
