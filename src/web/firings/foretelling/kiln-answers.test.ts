import { expect, test } from "vitest";
import { ladderOf } from "../../../firing/cones/cone.ts";
import { writeProgramme } from "../../../firing/programme/write-programme.ts";
import { foretell } from "../../../studio/foretell.ts";
import { batch, load, planOf } from "../../loads/testing/example-load.ts";
import { answerKiln, type LoadedKiln } from "./kiln-answers.ts";
import { loadedKiln } from "./use-foretelling.ts";

const mugs = batch("mug");
const kiln = loadedKiln(load("l", [mugs], ["mug", "mug", "mug"]), null) as LoadedKiln;
const { programme } = writeProgramme({ cone: "6", kind: "glaze", pace: "slow" });

test("a kiln of which nothing was learned is foretold as the command line foretells it", () => {
  const here = answerKiln({ kind: "foretell", kiln, programme });
  const there = foretell(kiln.request, kiln.plan, programme, { roomC: 20 });
  expect(here.prediction.kWh).toBe(there.prediction.kWh);
  expect(here.prediction.levels).toEqual(there.prediction.levels);
  expect(here.assumed).toEqual(there.assumed);
  expect(here.cone).toBe("6");
});

test("a programme is aimed with the load in the kiln, so that its ware gets the cone", () => {
  const written = answerKiln({ kind: "write", kiln, wish: { cone: "6", kind: "glaze", pace: "slow" } });
  expect(written.work).toBeGreaterThanOrEqual(1);
  const { prediction } = answerKiln({ kind: "foretell", kiln, programme: written.programme });
  // One level alone holds ware: it is what was aimed with, and it lies at the cone, not a tenth of one past it.
  const [level] = prediction.levels;
  expect(level?.ladder).toBeGreaterThanOrEqual(ladderOf("6"));
  expect(level?.ladder).toBeLessThan(ladderOf("6") + 0.25);
});

test("without a load it is written for a kiln that follows any climb", () => {
  const wish = { cone: "04", kind: "bisque", pace: "fast" } as const;
  expect(answerKiln({ kind: "write", kiln: null, wish }).programme).toEqual(writeProgramme(wish).programme);
});

test("advice never takes heat from ware that lacks it, for the probe's sake", () => {
  const [level] = planOf(["mug", "mug", "mug"]).levels;
  const levels = [41, 160, 280].map((topMm) => ({ ...(level as NonNullable<typeof level>), topMm }));
  const full = loadedKiln(load("full", [mugs], [], { plan: { ...planOf([]), levels } }), null) as LoadedKiln;
  const fast = writeProgramme({ cone: "6", kind: "glaze", pace: "fast" }).programme;
  const peakC = fast.segments.at(-1)?.targetC ?? 0;
  const hotter = {
    ...fast,
    segments: fast.segments.map((each) => (each.targetC === peakC ? { ...each, targetC: peakC + 12 } : each)),
  };
  const { prediction } = answerKiln({ kind: "foretell", kiln: full, programme: hotter });
  expect(prediction.probe.ladder).toBeGreaterThan(ladderOf("6"));
  expect(prediction.levels[0]?.ladder).toBeLessThan(ladderOf("6"));
  const lower = /a peak of \d+ °C instead of \d+ is enough/;
  // On the command line and the sheet as on the screen.
  const foretold = foretell(full.request, full.plan, hotter, { roomC: 20 });
  expect(foretold.advice.filter((each) => lower.test(each))).toEqual([]);
  const advice = answerKiln({ kind: "advise", kiln: full, programme: hotter });
  expect(advice.length).toBeGreaterThan(0);
  expect(advice.filter((each) => lower.test(each))).toEqual([]);
});

test("a cone the kiln never reaches is refused in words", () => {
  expect(() => answerKiln({ kind: "write", kiln: null, wish: { cone: "14", kind: "lustre", pace: "fast" } })).toThrow(
    /cone/,
  );
});
