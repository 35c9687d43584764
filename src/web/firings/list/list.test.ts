import { describe, expect, test } from "vitest";
import type { FiringWatch } from "../../../studio/api/watch-contract.ts";
import type { FiringRecord } from "../../../studio/records/firing-record.ts";
import { batch, load } from "../../loads/testing/example-load.ts";
import { firing } from "../testing/example-firing.ts";
import { firingGroups, measuredKWh, outcomeCounts, outcomeWords } from "./firing-groups.ts";
import { liveWords } from "./live-words.ts";
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

describe("a firing under way in a line", () => {
  const started = { state: "firing", startedAt: "2026-11-20T08:00:00.000Z" } as const;
  const foretold = {
    ...{ hours: 9, kWh: 30, peakC: 1220, cone: "6" as const, levels: [], coolHours: {}, curve: [], cost: null },
  };
  const watch = (change: Partial<FiringWatch> = {}): FiringWatch => ({
    ...{ now: "2026-11-20T11:00:00.000Z", pace: 1, startedAt: started.startedAt, place: null, heat: [], faults: [] },
    latest: { at: "2026-11-20T11:00:00.000Z", tempC: 540, probe: "probe" },
    outlook: null,
    ...change,
  });
  const moment = (atMin: number) => ({ atMin, fromMin: atMin - 5, toMin: atMin + 5 });

  test("nobody watches: by the clock, and as foretold", () => {
    const words = liveWords(firing("f", { ...started, foretold }), undefined, "2026-11-20T09:30:00.000Z", "C");
    expect(words).toEqual(["Firing for 1 h 30 min", expect.stringMatching(/^shuts off about \S/)]);
  });

  test("watched: by the studio's own clock, how hot, and when the cone goes", () => {
    const outlook = { cone: { cone: "6", down: moment(500) }, shutOff: moment(510), cool: [], curve: [], kWh: null };
    const words = liveWords(firing("f", { ...started, foretold }), watch({ outlook }), "2026-11-20T09:30:00.000Z", "F");
    // 540 °C is 1004 °F.
    expect(words.slice(0, 2)).toEqual(["Firing for 3 h 00 min", "1004 °F"]);
    expect(words[2]).toMatch(/^cone 6 about /);
    expect(words[3]).toMatch(/^shuts off about /);
  });

  test("cooling: when the lid may be lifted", () => {
    const cool = [200, 120, 95, 50].map((tempC) => ({ tempC, means: "", when: moment(1200) }));
    const outlook = { cone: null, shutOff: null, cool, curve: [], kWh: null };
    const cooling = firing("f", { ...started, state: "cooling", shutOffAt: "2026-11-20T10:15:00.000Z" });
    const words = liveWords(cooling, watch({ outlook }), "2026-11-20T09:30:00.000Z", "C");
    expect(words).toEqual(["Cooling for 45 min", "540 °C", expect.stringMatching(/^lid about /)]);
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
