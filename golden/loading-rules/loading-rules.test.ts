import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { checkPlan } from "../../src/loading/checker/check-plan.ts";
import { readLoadPlan } from "../../src/loading/read-load-plan.ts";
import { readLoadRequest } from "../../src/loading/read-load-request.ts";

const HAND_ROUNDED_MM = 2e-6;

type Changes = Readonly<Record<string, unknown>>;
interface Case {
  readonly rule: string;
  readonly what: string;
  readonly working: string;
  readonly plan: string;
  readonly rules?: Changes;
  /** Changes to the request and the plan that both sides share, and those of each side. */
  readonly both?: Changes;
  readonly inside: Changes;
  readonly outside: Changes;
  readonly foundMm: number | null;
  readonly allowedMm: number | null;
}
interface Counted {
  readonly name: string;
  readonly count: number;
}

const read = (name: string): unknown => JSON.parse(readFileSync(new URL(name, import.meta.url), "utf8"));
const cases = read("cases.json") as Case[];

/** The request and plan of one side of a case, through the same door as any file. */
function built(each: Case, side: "inside" | "outside") {
  const files = {
    request: { ...(read("request.json") as object), ...(each.rules ? { rules: each.rules } : {}) },
    plan: {
      format: "load-plan/1",
      left: "rest" as unknown,
      ...(read("plans.json") as Record<string, object>)[each.plan],
    },
  };
  for (const [path, value] of Object.entries({ ...each.both, ...each[side] })) put(files, path, value);
  if (typeof files.plan.left === "string") files.plan.left = rest(files, files.plan.left === "rest" ? 0 : 1);
  const request = readLoadRequest(files.request);
  return { request, plan: readLoadPlan(files.plan, request) };
}

/** Sets `plan.levels[0].topMm` and the like. */
function put(files: unknown, path: string, value: unknown): void {
  const steps = path.replaceAll(/\[(\d+)\]/g, ".$1").split(".");
  const last = steps.pop() as string;
  let at = files as Record<string, unknown>;
  for (const step of steps) at = at[step] as Record<string, unknown>;
  at[last] = value;
}

/** Every waiting piece the plan does not place; `forgotten` of the first kind are left out of the list. */
function rest(files: { request: object; plan: object }, forgotten: number) {
  const { ware } = files.request as { ware: Counted[] };
  const { levels } = files.plan as { levels: { placements: { ware: string }[] }[] };
  return ware
    .map(({ name, count }, i) => {
      const placed = levels.flatMap((level) => level.placements).filter((each) => each.ware === name).length;
      return { ware: name, count: count - placed - (i === 0 ? forgotten : 0), reason: "waits" };
    })
    .filter((left) => left.count > 0);
}

describe("each rule, just inside and just outside its limit (common practice, no source; distances worked by hand)", () => {
  for (const each of cases) {
    const title = `${each.rule}: ${each.what}${each.working && ` (${each.working})`}`;
    test(`${title}: inside`, () => {
      const { request, plan } = built(each, "inside");
      expect(checkPlan(request, plan)).toEqual([]);
    });
    test(`${title}: outside`, () => {
      const { request, plan } = built(each, "outside");
      const broken = checkPlan(request, plan);
      expect(broken.map((found) => found.rule)).toEqual([each.rule]);
      expect(broken[0]?.allowedMm).toBe(each.allowedMm);
      if (each.foundMm === null) expect(broken[0]?.foundMm).toBeNull();
      else expect(Math.abs((broken[0]?.foundMm ?? Number.NaN) - each.foundMm)).toBeLessThan(HAND_ROUNDED_MM);
    });
  }

  test("every rule has a case", async () => {
    const { ALL_RULES } = await import("../../src/loading/rules/all-rules.ts");
    expect(new Set(cases.map((each) => each.rule))).toEqual(new Set(ALL_RULES.map((rule) => rule.name)));
  });
});
