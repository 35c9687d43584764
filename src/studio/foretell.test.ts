import { describe, expect, test } from "vitest";
import { workOf } from "../firing/heat-work/questions.ts";
import type { Programme } from "../firing/programme/programme.ts";
import { writeProgramme } from "../firing/programme/write-programme.ts";
import { readTariff } from "../firing/tariff/tariff.ts";
import { handMadeLoad } from "../sheets/testing/sheet-cases.ts";
import { firingStart } from "./firing-start.ts";
import { foretell } from "./foretell.ts";
import { mayTrade } from "./may-trade.ts";
import { coneWanted, plannedFiring, wareCurves } from "./planned-firing.ts";
import { stillClimbs } from "./still-climbs.ts";

const { request, plan } = handMadeLoad();
const programme: Programme = {
  format: "programme/1",
  name: "cone 6",
  cone: "6",
  kind: "glaze",
  segments: [
    { rateCPerHour: 150, targetC: 1120, holdMin: 0 },
    { rateCPerHour: 60, targetC: 1215, holdMin: 5 },
  ],
};
const foretold = foretell(request, plan, programme, { roomC: 20 });

describe("a firing foretold", () => {
  test("has one level for each of the plan's, balances its energy, and advises in sentences", () => {
    expect(foretold.prediction.levels).toHaveLength(plan.levels.length);
    expect(foretold.prediction.energyResidual).toBeLessThan(1e-10);
    expect(foretold.advice.length).toBeGreaterThan(1);
    for (const sentence of foretold.advice) expect(sentence).toMatch(/^[A-Z].*\.$/);
    expect(foretold.advice[0]).toMatch(/^At the probe cone 6/);
  });

  test("says what it takes for granted: the build, the weights, the dryness", () => {
    expect(foretold.assumed.join(" ")).toMatch(/kiln\.build\.powerW.*walls taken 6 mm thick/);
    expect(foretold.assumed.join(" ")).not.toMatch(/Raw ware|No probe/);
    const noProbe = { ...request, kiln: { ...request.kiln, probes: [] } };
    const raw = foretell(noProbe, plan, { ...programme, cone: "06", kind: "bisque" }, { roomC: 20 });
    expect(raw.assumed.join(" ")).toMatch(/No probe is given.*Raw ware is taken bone dry/);
  });

  test("raw ware takes more energy than fired ware, for the same programme", () => {
    const raw = foretell(request, plan, { ...programme, kind: "once-fired" }, { roomC: 20 });
    expect(raw.prediction.kWh).toBeGreaterThan(foretold.prediction.kWh);
  });
});

describe("the cone it is held against", () => {
  const allAsk = (cone: string | null) => ({ ...request, ware: request.ware.map((ware) => ({ ...ware, cone })) });
  const { cone: _, ...silent } = programme;

  test("is the programme's own, else the one all the loaded ware asks for, else none", () => {
    expect(coneWanted(allAsk("04"), plan, programme)).toBe("6");
    expect(coneWanted(allAsk("^04"), plan, silent)).toBe("04");
    expect(coneWanted(request, plan, silent)).toBeUndefined();
    expect(coneWanted(allAsk("as hot as it goes"), plan, silent)).toBeUndefined();
    const others = { ...request, ware: request.ware.map((ware, i) => ({ ...ware, cone: i === 0 ? "6" : "5" })) };
    expect(coneWanted(others, plan, silent)).toBeUndefined();
  });

  test("ware that stays out is not asked", () => {
    const ware = request.ware.map((each) => ({ ...each, cone: each.name === "umbrella jar" ? "10" : "6" }));
    expect(coneWanted({ ...request, ware }, plan, silent)).toBe("6");
  });

  test("a cone that is none is refused", () => {
    expect(() => coneWanted(request, plan, { ...programme, cone: "sixish" })).toThrow(/cone: found "sixish"/);
  });
});

test("ware may trade levels only where both fit under the other's ceiling, on the same kind of shelf", () => {
  // Level 1: 41 mm to a shelf underside at 207 − 16 = 191, less 6 mm: 144 mm. Level 2: 460 − 25 − 207 = 228 mm.
  const fits = mayTrade(request, plan);
  expect(fits(0, 1)).toBe(true);
  const jug = request.ware.map((ware) => (ware.name === "jug" ? { ...ware, heightMm: 139 } : ware));
  // With its cookie of 6 mm it is 145 mm tall: one too many for level 1.
  expect(mayTrade({ ...request, ware: jug }, plan)(0, 1)).toBe(false);
  const shelves = {
    ...plan,
    levels: plan.levels.map((level, i) => ({ ...level, shelf: i === 0 ? "other" : level.shelf })),
  };
  expect(mayTrade(request, shelves)(0, 1)).toBe(false);
  expect(fits(0, 7)).toBe(false);
});

test("a programme written for this load reaches its cone at the mean of the levels that hold ware", () => {
  const simulate = wareCurves(plannedFiring(request, plan, "glaze", 20));
  const { programme: written } = writeProgramme({ cone: "6", kind: "glaze", pace: "medium", simulate });
  expect(workOf("6", simulate(written))).toBeGreaterThanOrEqual(1);
  const { prediction } = foretell(request, plan, written, { roomC: 20 });
  const ladders = prediction.levels.map((level) => level.ladder);
  expect(Math.min(...ladders)).toBeLessThanOrEqual(27.2);
  expect(Math.max(...ladders)).toBeGreaterThanOrEqual(26.8);
});

test("a level without ware does not count in the mean", () => {
  const empty = { ...plan, levels: plan.levels.map((level, i) => (i === 0 ? { ...level, placements: [] } : level)) };
  const { firing } = foretell(request, empty, programme, { roomC: 20 }).prediction;
  const curve = wareCurves(plannedFiring(request, empty, "glaze", 20))(programme);
  expect(Array.from(curve.tempC)).toEqual(Array.from(firing.levelC[1] as Float64Array));
});

describe("when to start", () => {
  const tariff = readTariff({
    format: "tariff/1",
    name: "night and day",
    timeZone: "America/New_York",
    currency: "USD",
    pricePerKWh: 0.3,
    carbonGPerKWh: 400,
    slots: [{ name: "at night", from: "21:00", to: "07:00", pricePerKWh: 0.15, carbonGPerKWh: 200 }],
  });

  test("is reckoned with the time until the lid may be lifted: shut-off and cooling to 95 °C", () => {
    const start = firingStart(foretold.prediction, tariff, { start: "2026-10-31T12:00", openBy: "18:00" });
    const { hours, coolHours } = foretold.prediction;
    expect(start.openAfterHours).toBeCloseTo(hours + (coolHours["95"] as number), 12);
    if (start.best.kind === "none") throw new Error(start.best.reason);
    const { startIso, opensIso, cost } = start.best.best;
    const openMs = Date.parse(opensIso as string) - Date.parse(startIso);
    expect(openMs / 3_600_000).toBeCloseTo(start.openAfterHours as number, 5);
    expect(cost.total).toBeLessThanOrEqual(start.cost.total);
    expect(start.sentences.join(" ")).toMatch(
      /costs \d+\.\d\d USD \(\d+\.\d kWh at other times\), and \d+\.\d kg of carbon dioxide\. Best start: /,
    );
  });

  test("no opening is promised for a kiln that does not cool within a week", () => {
    const never = { ...foretold.prediction, coolHours: { "95": null } };
    const { best } = firingStart(never, tariff, { start: "2026-10-31T12:00", openBy: "18:00" });
    expect(best).toMatchObject({ kind: "none", reason: expect.stringMatching(/over a week/) });
    expect(firingStart(never, tariff, { start: "2026-10-31T12:00" }).best.kind).toBe("found");
  });
});

test("worn elements on a low supply: what they still do is told with the wear that would end it", () => {
  const build = { powerW: 6500, ratedVolts: 240, suppliedVolts: 236, wornShare: 0.05 };
  const worn = stillClimbs({ ...request, kiln: { ...request.kiln, build } }, plan, "glaze", 20, "6");
  expect(worn.powerW).toBeCloseTo((6500 * (236 / 240) ** 2) / 1.05, 6);
  expect(worn.verdict).not.toBe("no");
  expect(worn.wornShareLimit).toBeGreaterThan(0.05);
  expect(worn.sentences.join(" ")).toMatch(/risen by \d+ % \(now 5 %\), cone 6 is out of reach with this load/);
  expect(worn.sentences.at(-1)).toMatch(/unplugged or its supply locked off.*licensed electrician/);
  const weak = stillClimbs({ ...request, kiln: { ...request.kiln, build: { powerW: 2500 } } }, plan, "glaze", 20, "6");
  expect(weak).toMatchObject({ verdict: "no", wornShareLimit: null });
  expect(weak.sentences[1]).toMatch(/Even new elements on this supply do not bring this load to cone 6/);
});
