import { describe, expect, test } from "vitest";
import { listed, sampleBatch } from "../testing/sample-batches.ts";
import { firingGroups } from "./firing-groups.ts";

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
