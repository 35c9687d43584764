import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { seededChance } from "../../measures/seeded-chance.ts";
import { type Broken, checkPlan } from "../checker/check-plan.ts";
import type { LoadPlan, Placement } from "../load-plan.ts";
import type { LoadRequest } from "../load-request.ts";
import { readLoadRequest } from "../read-load-request.ts";
import { anyPlan, EIGHT_SIDED } from "../testing/random-loads.ts";
import { randomRequest } from "../testing/random-requests.ts";
import type { PlacementPlace, PlanAround } from "./plan-around.ts";
import { planLoad } from "./plan-load.ts";

function planned(request: LoadRequest, around?: PlanAround, workLimit = 6000) {
  const outcome = planLoad(request, { seed: 3, workLimit, ...(around ? { around } : {}) });
  if (outcome.kind !== "planned") throw new Error(outcome.reasons.map((reason) => reason.message).join(" "));
  return outcome;
}

const at = (plan: LoadPlan, { level, placement }: PlacementPlace): Placement | undefined =>
  plan.levels[level]?.placements[placement];

const worthOfPlan = (request: LoadRequest, plan: LoadPlan): number => {
  const values = new Map(request.ware.map((ware) => [ware.name, ware.value]));
  return plan.levels.flatMap((level) => level.placements).reduce((sum, { ware }) => sum + (values.get(ware) ?? 0), 0);
};

/** The plan with the placements that `keep` says, and where the pins are then. */
function thinned(plan: LoadPlan, pins: readonly PlacementPlace[], keep: (level: number, placement: number) => boolean) {
  const moved: PlacementPlace[] = [];
  const levels = plan.levels.map((each, level) => {
    const placements: Placement[] = [];
    each.placements.forEach((one, placement) => {
      if (!keep(level, placement)) return;
      if (pins.some((pin) => pin.level === level && pin.placement === placement)) {
        moved.push({ level, placement: placements.length });
      }
      placements.push(one);
    });
    return { ...each, placements };
  });
  return { plan: { ...plan, levels }, pins: moved };
}

/** What is broken beyond what the furniture and the kept pieces break alone. A level that tipped already may tip still. */
function newlyBroken(request: LoadRequest, plan: LoadPlan, kept: LoadPlan): Broken[] {
  const before = checkPlan(request, kept);
  return checkPlan(request, plan).filter(
    (broken) =>
      !before.some((old) => old.rule === broken.rule && old.level === broken.level && old.rule === "balance") &&
      !before.some((old) => old.message === broken.message),
  );
}

describe("planning around a plan that keeps every rule", () => {
  it("leaves what is pinned as it is, keeps every rule, and is worth no less", () => {
    let made = 0;
    for (let seed = 3001; seed <= 3120; seed++) {
      const request = randomRequest(seed);
      const first = planLoad(request, { seed, workLimit: 4000 });
      if (first.kind !== "planned") continue;
      made++;
      const chance = seededChance(seed);
      const pins = first.plan.levels.flatMap(({ placements }, level) =>
        placements.flatMap((_, placement) => (chance.next() < 1 / 3 ? [{ level, placement }] : [])),
      );
      const isPinned = (level: number, placement: number): boolean =>
        pins.some((pin) => pin.level === level && pin.placement === placement);

      const again = planned(request, { plan: first.plan, keep: "pinned", pins });
      const alone = thinned(first.plan, pins, isPinned);
      expect(newlyBroken(request, again.plan, alone.plan), `seed ${seed}, pinned`).toEqual([]);
      expect(again.pins.map((pin) => at(again.plan, pin))).toEqual(pins.map((pin) => at(first.plan, pin)));
      expect(worthOfPlan(request, again.plan)).toBeGreaterThanOrEqual(worthOfPlan(request, first.plan) - 1e-9);

      const half = thinned(first.plan, pins, (level, placement) => isPinned(level, placement) || chance.next() < 0.5);
      const rest = planned(request, { plan: half.plan, keep: "all", pins: half.pins });
      expect(newlyBroken(request, rest.plan, half.plan), `seed ${seed}, all`).toEqual([]);
      expect(rest.pins).toEqual(half.pins);
      half.plan.levels.forEach(({ placements, ...furniture }, level) => {
        const { placements: now, ...same } = rest.plan.levels[level] as LoadPlan["levels"][number];
        expect(same).toEqual(furniture);
        expect(now.slice(0, placements.length)).toEqual(placements);
      });
      expect(worthOfPlan(request, rest.plan)).toBeGreaterThanOrEqual(worthOfPlan(request, half.plan) - 1e-9);
      expect(rest.plan.figures.value).toBeCloseTo(worthOfPlan(request, rest.plan), 9);
    }
    expect(made).toBeGreaterThan(70);
  }, 60_000);

  it("finds the hole a piece was taken from", () => {
    const request = readLoadRequest({
      format: "load-request/1",
      kiln: { name: "back room", chamber: { shape: "round", diameterMm: 420, depthMm: 200 } },
      furniture: {
        shelves: [{ name: "full", shape: "disc", diameterMm: 390, thicknessMm: 16, count: 1 }],
        posts: [{ heightMm: 25, widthMm: 35, shape: "square", count: 3 }],
      },
      ware: [{ name: "beaker", count: 12, diameterMm: 90, heightMm: 100 }],
    });
    const full = planned(request, undefined, 200_000);
    expect(full.plan.figures.pieces).toBe(12);
    for (let placement = 0; placement < 12; placement++) {
      const gap = thinned(full.plan, [], (_, each) => each !== placement);
      expect(planned(request, { plan: gap.plan, keep: "all", pins: [] }).plan.figures.pieces).toBe(12);
    }
  });
});

describe("planning around a plan she dragged any way", () => {
  it("sets nothing down that breaks a rule, whatever stands there already, on half shelves too", () => {
    fc.assert(
      fc.property(anyPlan, fc.integer({ min: 0, max: 8 }), fc.boolean(), (strewn, most, all) => {
        // No more of a kind than wait.
        const used = new Map<string, number>();
        const { plan } = thinned(strewn, [], (level, placement) => {
          const name = at(strewn, { level, placement })?.ware ?? "";
          used.set(name, (used.get(name) ?? 0) + 1);
          return placement < most && (used.get(name) ?? 0) <= 4;
        });
        const pins = plan.levels.flatMap(({ placements }, level) =>
          placements.flatMap((_, placement) => ((placement + level) % 3 === 0 ? [{ level, placement }] : [])),
        );
        const outcome = planned(EIGHT_SIDED, { plan, keep: all ? "all" : "pinned", pins }, 3000);
        const kept = plan.levels.map(({ placements }, level) =>
          all ? placements.length : pins.filter((pin) => pin.level === level).length,
        );
        const ofNewPieces = checkPlan(EIGHT_SIDED, outcome.plan).filter(({ places }) =>
          places.some((place) => place.kind === "piece" && place.placement >= (kept[place.level] as number)),
        );
        expect(ofNewPieces).toEqual([]);
        expect(outcome.pins.map((pin) => at(outcome.plan, pin))).toEqual(pins.map((pin) => at(plan, pin)));
      }),
      { numRuns: 60, seed: 11 },
    );
  }, 60_000);
});

// Half shelves drawn by hand: the rules' own words say what may stand where.
const HALVES = readLoadRequest({
  format: "load-request/1",
  kiln: { name: "eight sides", chamber: { shape: "polygon", sides: 8, acrossFlatsMm: 430, depthMm: 460 } },
  furniture: {
    shelves: [
      { name: "full", shape: "disc", diameterMm: 390, thicknessMm: 16, count: 1 },
      { name: "half", shape: "half-disc", diameterMm: 390, thicknessMm: 16, count: 2 },
    ],
    posts: [25, 75, 100].map((heightMm) => ({ heightMm, widthMm: 30, shape: "square", count: 12 })),
  },
  ware: [
    { name: "beaker", count: 40, diameterMm: 78, heightMm: 60 },
    { name: "vase", count: 2, diameterMm: 98, heightMm: 300, value: 20 },
  ],
});
const post = (xMm: number, yMm: number, ...heightsMm: number[]) => ({ xMm, yMm, turnDeg: 0, heightsMm });
const level = (shelf: string, topMm: number, turnDeg: number, posts: LoadPlan["levels"][number]["posts"]) => ({
  shelf,
  topMm,
  xMm: 0,
  yMm: 0,
  turnDeg,
  posts,
  placements: [],
});
const HIGH = level("half", 116, 0, [post(140, 40, 100), post(-140, 40, 100), post(0, 160, 100)]);
const LOW = level("half", 91, 180, [post(140, -40, 75), post(-140, -40, 75), post(0, -150, 75)]);
const AS_HIGH = level("half", 116, 180, [post(140, -40, 100), post(-140, -40, 100), post(0, -150, 100)]);
const OVER_BOTH = level("full", 232, 0, [post(140, 40, 100), post(-140, 40, 100), post(0, -150, 100, 25)]);
const OVER_ALIKE = level("full", 232, 0, [post(140, 40, 100), post(-140, 40, 100), post(0, -150, 100)]);
const FULL = level("full", 41, 0, [post(140, 40, 25), post(-140, 40, 25), post(0, -150, 25)]);
const ABOVE_FULL = level("half", 157, 0, [post(140, 40, 100), post(-140, 40, 100), post(0, 160, 100)]);
const withLevels = (...levels: LoadPlan["levels"][number][]): LoadPlan => ({
  format: "load-plan/1",
  levels,
  left: [],
  figures: {},
});

describe("planning around half shelves", () => {
  it.each([
    ["at two heights, a full shelf over both", [HIGH, LOW, OVER_BOTH]],
    ["in another order in the file", [OVER_BOTH, LOW, HIGH]],
    ["at one height", [HIGH, AS_HIGH, OVER_ALIKE]],
  ])("loads every level and keeps every rule: %s", (_, levels) => {
    const { plan } = planned(HALVES, { plan: withLevels(...levels), keep: "pinned", pins: [] }, 40_000);
    expect(checkPlan(HALVES, plan)).toEqual([]);
    for (const each of plan.levels) expect(each.placements.length).toBeGreaterThan(4);
  });

  it("stands what is too tall to pass beneath a half shelf beside it", () => {
    const { plan } = planned(HALVES, { plan: withLevels(FULL, ABOVE_FULL), keep: "all", pins: [] }, 40_000);
    const vases = (plan.levels[0]?.placements ?? []).filter((each) => each.ware === "vase");
    expect(vases).toHaveLength(2);
    // The half shelf's straight side is y = 0; 49 mm of vase and 6 mm of headroom.
    for (const vase of vases) expect(vase.yMm).toBeLessThanOrEqual(-55 + 1e-3);
    expect(checkPlan(HALVES, plan).filter((each) => each.places.some((place) => place.kind === "piece"))).toEqual([]);
  });
});

describe("what a given plan must be", () => {
  const request = readLoadRequest({
    format: "load-request/1",
    kiln: { name: "back room", chamber: { shape: "round", diameterMm: 420, depthMm: 300 } },
    furniture: HALVES.furniture,
    ware: [{ name: "beaker", count: 2, diameterMm: 78, heightMm: 60, mustFire: true }],
  });
  const beaker = (xMm: number) => ({ ware: "beaker", xMm, yMm: 0, turnDeg: 0 });
  const holding = (...placements: Placement[]): LoadPlan => withLevels({ ...FULL, placements });
  const around =
    (plan: LoadPlan, keep: "pinned" | "all", pins: PlacementPlace[] = []) =>
    () =>
      planLoad(request, { seed: 1, workLimit: 1000, around: { plan, keep, pins } });

  it("names a pin that points at nothing, a strange shelf, a strange piece and one piece too many", () => {
    const refused = (code: string, path: string) => expect.objectContaining({ code, path });
    expect(around(holding(beaker(0)), "pinned", [{ level: 0, placement: 1 }])).toThrow(
      refused("unknown-place", "around.pins[0]"),
    );
    expect(around(withLevels({ ...FULL, shelf: "slate" }), "all")).toThrow(
      refused("unknown-name", "around.plan.levels[0].shelf"),
    );
    expect(around(holding({ ...beaker(0), ware: "ghost" }), "all")).toThrow(
      refused("unknown-name", "around.plan.levels[0].placements[0].ware"),
    );
    expect(around(holding(beaker(-100), beaker(0), beaker(100)), "all")).toThrow(
      refused("too-many-kept", "around.plan.levels[0].placements[2].ware"),
    );
  });

  it("lets pieces go that are no longer asked for, and those beyond their count", () => {
    const strange = holding({ ...beaker(0), ware: "ghost" }, beaker(-100), beaker(100), beaker(0));
    expect(planned(request, { plan: strange, keep: "pinned", pins: [] }).plan.figures.pieces).toBe(2);
  });

  it("plans freely around a plan with no levels, and keeps levels that hold nothing", () => {
    expect(planned(request, { plan: withLevels(), keep: "all", pins: [] }).plan.figures.pieces).toBe(2);
    const { plan } = planned({ ...request, ware: [] }, { plan: withLevels(FULL), keep: "all", pins: [] });
    expect(plan.levels).toEqual([FULL]);
  });

  it("looks no further once nothing more could stand on these levels", () => {
    const tall = { ...(HALVES.ware[1] as LoadRequest["ware"][number]), heightMm: 290 };
    const asked = { ...request, ware: [...request.ware, tall] };
    const given = { plan: withLevels(FULL), keep: "all", pins: [] } as const;
    expect(planned(asked, given, Number.POSITIVE_INFINITY).plan.figures.pieces).toBe(2);
  });

  it("says what stays out on levels that are given", () => {
    const tall = { ...(HALVES.ware[1] as LoadRequest["ware"][number]), heightMm: 290, count: 1 };
    const { plan } = planned({ ...request, ware: [tall] }, { plan: withLevels(FULL), keep: "all", pins: [] });
    expect(plan.left).toEqual([{ ware: "vase", count: 1, reason: expect.stringContaining("no level tall enough") }]);
  });
});
