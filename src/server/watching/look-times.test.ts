import { describe, expect, test } from "vitest";
import type { WatchState } from "../../firing/watching/watch-firing.ts";
import { lookTimes, toldLookTimes } from "./look-times.ts";

const NOW = "2026-11-25T09:00:00.000Z";
const LATER = "2026-11-25T09:20:00.000Z";

/** A firing whose cone is to go down at minute 700, and that is under 95 °C from minute 1500. */
const state = (doing: "ramp" | "over", tempC: number): WatchState =>
  ({
    tempC,
    place: { doing },
    outlook: {
      cone: { cone: "6", probe: { atMin: 700, spreadMin: 6.4 }, levels: [] },
      cool: [
        { tempC: 200, means: "", at: { atMin: 1200, spreadMin: 20 } },
        { tempC: 95, means: "", at: { atMin: 1500, spreadMin: 20 } },
      ],
    },
  }) as unknown as WatchState;
const now = (firing: WatchState, minute: number) =>
  lookTimes(firing, minute)
    .filter(({ isNow }) => isNow)
    .map(({ kind }) => kind);

describe("moments to look", () => {
  test("are half an hour before a cone goes down, and while it does not", () => {
    expect([now(state("ramp", 1150), 669), now(state("ramp", 1180), 670), now(state("ramp", 1222), 699)]).toEqual([
      [],
      ["cone due"],
      ["cone due"],
    ]);
    expect([now(state("ramp", 1222), 701), now(state("over", 1200), 690)]).toEqual([[], []]);
    expect(lookTimes(state("ramp", 1180), 675)[0]?.message).toMatch(/^Cone 6 .* about 25 min \(give or take 6\)/);
  });

  test("are when the lid may be lifted: by the model and by the reading, both", () => {
    expect(now(state("over", 94), 1499)).toEqual([]);
    expect(now(state("over", 96), 1501)).toEqual([]);
    expect(now(state("ramp", 50), 1501)).toEqual([]);
    expect(now(state("over", 95), 1500)).toEqual(["may be opened"]);
  });

  test("are told once each, however what is foretold moves; a cone's is over when it is down", () => {
    const due = toldLookTimes([], lookTimes(state("ramp", 1180), 675), NOW);
    expect(due).toMatchObject([{ kind: "cone due", since: NOW, until: null }]);
    expect(toldLookTimes(due, lookTimes(state("ramp", 1190), 680), LATER)).toEqual(due);
    const down = toldLookTimes(due, lookTimes(state("over", 1222), 705), LATER);
    expect(down).toEqual([{ ...due[0], until: LATER }]);
    expect(toldLookTimes(down, lookTimes(state("ramp", 1180), 675), LATER)).toEqual(down);
    const open = toldLookTimes(down, lookTimes(state("over", 90), 1510), LATER);
    expect(open.map(({ kind, until }) => [kind, until])).toEqual([
      ["cone due", LATER],
      ["may be opened", null],
    ]);
  });
});
