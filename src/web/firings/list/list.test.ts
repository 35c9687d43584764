import { describe, expect, test } from "vitest";
import type { FiringRecord } from "../../../studio/records/firing-record.ts";
import { batch, load } from "../../loads/testing/example-load.ts";
import { firing } from "../testing/example-firing.ts";
import { firingGroups, measuredKWh, outcomeCounts, outcomeWords } from "./firing-groups.ts";
import { loadsToFire } from "./loads-to-fire.ts";

const month = (moment: string) => moment.slice(0, 7);
const ids = (list: readonly { readonly id: string }[]) => list.map(({ id }) => id);

describe("firings as she looks for them", () => {
  const fires = firing("fires", { state: "firing", startedAt: "2026-11-20T08:00:00.000Z" });
  const cools = firing("cools", { state: "cooling", startedAt: "2026-11-21T08:00:00.000Z" });
  const soon = firing("soon", { plannedStartAt: "2026-11-26T18:00:00.000Z" });
  const later = firing("later", { plannedStartAt: "2026-11-28T18:00:00.000Z" });
  const open = firing("open");
  const over = (id: string, startedAt: string, kWh: number | null): FiringRecord =>
    firing(id, {
      state: "finished",
      startedAt,
      meterReadings: kWh === null ? [] : [100, 100 + kWh].map((each) => ({ at: startedAt, kWh: each })),
    });
  const a = over("a", "2026-11-03T08:00:00.000Z", 30);
  const b = over("b", "2026-11-09T08:00:00.000Z", null);
  const c = over("c", "2026-10-09T08:00:00.000Z", 12);

  test("what burns before what cools, the next start first, the past by month with the latest first", () => {
    const groups = firingGroups([c, open, later, a, cools, soon, b, fires], month);
    expect(ids(groups.underWay)).toEqual(["fires", "cools"]);
    expect(ids(groups.planned)).toEqual(["soon", "later", "open"]);
    expect(groups.past.map((each) => [each.month, ids(each.firings), each.kWh])).toEqual([
      ["2026-11", ["b", "a"], 30],
      ["2026-10", ["c"], 12],
    ]);
  });

  test("a firing whose meter was read once tells no energy", () => {
    expect(measuredKWh(firing("x", { meterReadings: [{ at: "2026-11-03T08:00:00.000Z", kWh: 5 }] }))).toBeNull();
  });

  test("outcomes are counted, and what there is none of is not said", () => {
    const judged = (grade: "good" | "second" | "lost", placement: number) => ({
      ...{ level: 0, placement, grade, faults: [], note: "", at: "2026-11-03T08:00:00.000Z" },
    });
    const counts = outcomeCounts({ outcomes: [judged("good", 0), judged("lost", 1), judged("good", 2)] });
    expect(counts && outcomeWords(counts)).toBe("2 good, 1 lost");
    expect(outcomeCounts({})).toBeNull();
  });
});

test("loads that wait for their fire: planned, none that a firing is open for, what stands in the kiln first", () => {
  const mugs = batch("mug");
  const planned = load("planned", [mugs], ["mug"]);
  const loaded = load("loaded", [mugs], ["mug"], { state: "loaded" });
  const bare = load("bare", [mugs], null);
  const fired = load("fired", [mugs], ["mug"], { state: "fired" });
  const taken = load("taken", [mugs], ["mug"]);
  const open = firing("f", { loadId: "taken" });
  const over = firing("g", { loadId: "planned", state: "finished", endedAt: "2026-11-03T08:00:00.000Z" });
  expect(ids(loadsToFire([planned, loaded, bare, fired, taken], [open, over]))).toEqual(["loaded", "planned"]);
});
