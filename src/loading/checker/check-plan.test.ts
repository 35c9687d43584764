import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { GLAZE_WARE_RULES } from "../clearance-rules.ts";
import type { LoadPlan } from "../load-plan.ts";
import type { LoadRequest } from "../load-request.ts";
import { ALL_RULES, PIECE_RULES } from "../rules/all-rules.ts";
import { anyPlan, EIGHT_SIDED } from "../testing/random-loads.ts";
import type { Broken, Place } from "./broken.ts";
import { checkPiece, checkPlan } from "./check-plan.ts";
import { clearances } from "./clearances.ts";

const LAST_DIGITS_MM = 1e-6;

/** A break as rule, places and distance, so that lists can be compared whatever their order and last digits. */
const told = (broken: readonly Broken[], place: (place: Place) => Place = (each) => each): string[] =>
  broken
    .map((each) => {
      const mm = each.foundMm === null ? "-" : String(Math.round(each.foundMm / LAST_DIGITS_MM) * LAST_DIGITS_MM);
      const places = each.places.map((one) => JSON.stringify(place(one))).sort();
      return `${each.rule} ${Number(mm).toFixed(5)} ${places.join(" ")}`;
    })
    .sort();

function turned(request: LoadRequest, plan: LoadPlan, turnDeg: number): [LoadRequest, LoadPlan] {
  const cos = Math.cos((turnDeg * Math.PI) / 180);
  const sin = Math.sin((turnDeg * Math.PI) / 180);
  const turn = <Standing extends { xMm: number; yMm: number; turnDeg: number }>(each: Standing): Standing => ({
    ...each,
    xMm: each.xMm * cos - each.yMm * sin,
    yMm: each.xMm * sin + each.yMm * cos,
    turnDeg: each.turnDeg + turnDeg,
  });
  const fitting = <Fitting extends { angleDeg: number }>(each: Fitting): Fitting => ({
    ...each,
    angleDeg: each.angleDeg + turnDeg,
  });
  const { kiln } = request;
  return [
    { ...request, kiln: { ...kiln, probes: kiln.probes.map(fitting), spyholes: kiln.spyholes.map(fitting) } },
    {
      ...plan,
      levels: plan.levels.map((level) => ({
        ...turn(level),
        posts: level.posts.map(turn),
        placements: level.placements.map(turn),
      })),
    },
  ];
}

describe("checking a plan", () => {
  test("finds the same after kiln and load are turned by one side of the chamber", () => {
    fc.assert(
      fc.property(anyPlan, fc.integer({ min: 1, max: 7 }), (plan, sides) => {
        const found = told(checkPlan(EIGHT_SIDED, plan));
        expect(found.length).toBeGreaterThan(0);
        expect(told(checkPlan(...turned(EIGHT_SIDED, plan, 45 * sides)))).toEqual(found);
      }),
      { numRuns: 150 },
    );
  });

  test("finds the same whatever the order of the levels", () => {
    fc.assert(
      fc.property(anyPlan, (plan) => {
        const last = plan.levels.length - 1;
        const upsideDown = { ...plan, levels: plan.levels.toReversed() };
        const renamed = (place: Place): Place => ("level" in place ? { ...place, level: last - place.level } : place);
        expect(told(checkPlan(EIGHT_SIDED, upsideDown), renamed)).toEqual(told(checkPlan(EIGHT_SIDED, plan)));
      }),
      { numRuns: 150 },
    );
  });

  test("finds for each piece what it finds for all: nothing more, nothing less", () => {
    const pieceRules = new Set(PIECE_RULES.map((rule) => rule.name));
    fc.assert(
      fc.property(anyPlan, (plan) => {
        const all = checkPlan(EIGHT_SIDED, plan).filter((each) => pieceRules.has(each.rule));
        plan.levels.forEach(({ placements }, level) => {
          placements.forEach((_, placement) => {
            const isIt = (place: Place): boolean =>
              place.kind === "piece" && place.level === level && place.placement === placement;
            const own = all.filter((each) => each.places.some(isIt));
            expect(told(checkPiece(EIGHT_SIDED, plan, level, placement))).toEqual(told(own));
          });
        });
      }),
      { numRuns: 60 },
    );
  });

  test("breaks a clearance exactly where the nearest thing is nearer than the rule allows", () => {
    const rules = { ware: "gapMm", post: "gapMm", wall: "gapMm", "shelf edge": "shelfEdge", lid: "lidMm" } as const;
    const more = { "shelf above": "headroomMm", probe: "probeMm", spyhole: "spyholeMm" } as const;
    const ruleOf: Readonly<Record<string, string>> = { ...rules, ...more };
    fc.assert(
      fc.property(anyPlan, (plan) => {
        plan.levels.forEach(({ placements }, level) => {
          placements.forEach((_, placement) => {
            const near = clearances(EIGHT_SIDED, plan, level, placement);
            const expected = near
              .filter((each) => each.distanceMm < each.leastMm - 1e-3)
              .map((each) => ruleOf[each.kind]);
            const broken = checkPiece(EIGHT_SIDED, plan, level, placement).map((each) => each.rule);
            expect(new Set(broken)).toEqual(new Set(expected));
          });
        });
      }),
      { numRuns: 60 },
    );
  });

  test("says which pieces, what it found and what is the least, as a potter reads it", () => {
    const at = (ware: string, xMm: number) => ({ ware, xMm, yMm: 0, turnDeg: 180 });
    const post = (xMm: number, yMm: number) => ({ xMm, yMm, turnDeg: 0, heightsMm: [25] });
    const level = {
      shelf: "full",
      topMm: 41,
      xMm: 0,
      yMm: 0,
      turnDeg: 0,
      posts: [post(140, 0), post(-70, 121), post(-70, -121)],
      placements: [at("beaker", -40), at("beaker", 42.2)],
    };
    const plan: LoadPlan = { format: "load-plan/1", levels: [level], left: [], figures: {} };
    const [gap] = checkPlan(EIGHT_SIDED, plan).filter((each) => each.rule === "gapMm");
    expect(gap?.message).toBe(
      "beaker (level 1, piece 1) stands 4.2 mm from beaker (level 1, piece 2); 6 mm is the least.",
    );
    expect(gap?.things).toEqual(["beaker 1 on level 1", "beaker 2 on level 1"]);
    expect(gap?.places).toEqual([
      { kind: "piece", level: 0, placement: 0 },
      { kind: "piece", level: 0, placement: 1 },
    ]);
  });

  test("refuses a plan that names what the request has not", () => {
    const level = { shelf: "moon", topMm: 41, xMm: 0, yMm: 0, turnDeg: 0, posts: [], placements: [] };
    const plan: LoadPlan = { format: "load-plan/1", levels: [level], left: [], figures: {} };
    expect(() => checkPlan(EIGHT_SIDED, plan)).toThrow(
      'levels[0].shelf: found "moon"; expected a shelf of the request.',
    );
  });
});

describe("the list of rules", () => {
  test("holds every clearance of the format, with its default and its reason", () => {
    const set = ALL_RULES.filter((rule) => rule.setting !== null);
    expect(Object.fromEntries(set.map((rule) => [rule.setting, rule.defaultMm]))).toEqual(GLAZE_WARE_RULES);
    for (const rule of set) expect(rule.name).toBe(rule.setting);
    for (const rule of ALL_RULES) expect(rule.reason.length).toBeGreaterThan(10);
    expect(new Set(ALL_RULES.map((rule) => rule.name)).size).toBe(ALL_RULES.length);
  });
});
