import { describe, expect, test } from "vitest";
import type { LoadRecord } from "../../../studio/records/load-record.ts";
import { listed, sampleBatch } from "../testing/sample-batches.ts";
import { firingGroups } from "./firing-groups.ts";
import { inLoads, type Load } from "./in-loads.ts";

describe("what can go into one firing", () => {
  const ware = [
    sampleBatch("cup", { cone: "6", count: 12 }, { dueOn: "2026-11-20" }),
    sampleBatch("bowl", { cone: "6", count: 3 }, { dueOn: "2026-11-30" }),
    sampleBatch("jar", { cone: "06", count: 40 }, { firingKind: "bisque" }),
    sampleBatch("done", { cone: "6", count: 99 }, { stage: "finished" }),
  ];

  test("is counted by kind and cone, what is late first; finished ware waits for none", () => {
    expect(
      firingGroups(
        listed(
          ware,
          new Map([
            ["cup", 5],
            ["bowl", 3],
          ]),
        ),
      ),
    ).toEqual([
      {
        kind: "glaze",
        cone: "6",
        ids: ["cup", "bowl"],
        freeIds: ["cup"],
        pieces: 15,
        freePieces: 7,
        latePieces: 12,
        soonPieces: 3,
      },
      {
        kind: "bisque",
        cone: "06",
        ids: ["jar"],
        freeIds: ["jar"],
        pieces: 40,
        freePieces: 40,
        latePieces: 0,
        soonPieces: 0,
      },
    ]);
  });
});

describe("pieces that stand in a load already", () => {
  const kinds = [
    { name: "cup", count: 6, diameterMm: 70, heightMm: 65 },
    { name: "bowl", count: 2, diameterMm: 150, heightMm: 70 },
  ];
  const level = (...ware: string[]) => ({
    shelf: "full",
    topMm: 40,
    xMm: 0,
    yMm: 0,
    turnDeg: 0,
    posts: [],
    placements: ware.map((each) => ({ ware: each, xMm: 0, yMm: 0, turnDeg: 0 })),
  });
  const load = (id: string, more: Partial<Load> = {}): Load => ({
    id,
    state: "planned",
    request: { ware: kinds } as unknown as LoadRecord["request"],
    plan: null,
    sources: [
      { ware: "cup", wareId: "w-cup" },
      { ware: "bowl", wareId: "w-bowl" },
    ],
    ...more,
  });
  const plan = (...ware: string[]): LoadRecord["plan"] =>
    ({ format: "load-plan/1", levels: [level(...ware)], left: [] }) as unknown as LoadRecord["plan"];
  const counted = (...loads: Load[]) => Object.fromEntries(inLoads(loads));

  test("are those asked for until it is planned, then those that found a place", () => {
    expect(counted(load("a"))).toEqual({ "w-cup": 6, "w-bowl": 2 });
    expect(counted(load("a", { plan: plan("cup", "cup", "bowl") }))).toEqual({ "w-cup": 2, "w-bowl": 1 });
  });

  test("of several ways to load one firing, count as in the fullest; of several firings, together", () => {
    const one = load("a", { plan: plan("cup") });
    const other = load("b", { plan: plan("cup", "cup"), alternativeOf: "a" });
    const next = load("c", { plan: plan("cup") });
    expect(counted(one, other)).toEqual({ "w-cup": 2 });
    expect(counted(one, other, next)).toEqual({ "w-cup": 3 });
  });

  test("count no more once it is fired", () => {
    expect(counted(load("a", { state: "fired" }), load("b", { state: "unpacked" }))).toEqual({});
  });
});
