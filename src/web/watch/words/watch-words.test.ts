import { describe, expect, test } from "vitest";
import type { WatchedFault, WatchedHeat, WatchedPlace } from "../../../studio/api/watch-contract.ts";
import { faultsInOrder } from "./fault-words.ts";
import { conesWords, placeOfHeat } from "./heat-words.ts";
import { momentWords } from "./moment-words.ts";
import { paceWords } from "./pace-words.ts";
import { placeWords } from "./place-words.ts";
import { agoWords, silenceWords } from "./since-words.ts";
import { degreesFigure, degreesWords } from "./temperature-words.ts";

const RAMP: WatchedPlace = {
  ...{ segment: 2, doing: "ramp", rising: true, askedCPerHour: 150, wantedC: 900, behindC: 0, holdLeftMin: null },
};
const SEGMENTS = [100, 1100, 1222, 1222, 1000].map((targetC) => ({ rateCPerHour: 150, targetC, holdMin: 10 }));

describe("where in its programme a firing is", () => {
  test("is told by rate, target and segment, in her degrees", () => {
    expect(placeWords(RAMP, SEGMENTS, "C")).toBe("Climbing 150 °C/h to 1222 °C, segment 3 of 5");
    // 150 °C/h is 270 °F/h, 1222 °C is 2232 °F.
    expect(placeWords(RAMP, SEGMENTS, "F")).toBe("Climbing 270 °F/h to 2232 °F, segment 3 of 5");
  });

  test("tells what a hold has left, what it waits for, and that it is over", () => {
    const hold: WatchedPlace = { ...RAMP, doing: "hold", askedCPerHour: null, holdLeftMin: 65 };
    expect(placeWords(hold, SEGMENTS, "C")).toBe("Holding at 1222 °C, 1 h 05 min left, segment 3 of 5");
    expect(placeWords({ ...RAMP, doing: "wait" }, SEGMENTS, "C")).toBe(
      "Waiting until it gets to 1222 °C, segment 3 of 5",
    );
    expect(placeWords({ ...RAMP, doing: "over", segment: 5 }, SEGMENTS, "C")).toMatch(/over/);
    expect(placeWords({ ...RAMP, askedCPerHour: null, segment: 4, rising: false }, SEGMENTS, "C")).toBe(
      "Cooling as fast as it can to 1000 °C, segment 5 of 5",
    );
  });
});

describe("how far it is behind or ahead", () => {
  test("in degrees and in time, by the rate asked for", () => {
    // 25 °C at 150 °C/h is ten minutes.
    expect(paceWords({ ...RAMP, behindC: 25 }, "C")).toEqual({ kind: "mind", words: "25 °C behind, about 10 min" });
    expect(paceWords({ ...RAMP, behindC: -10 }, "C")).toEqual({ kind: "keeps", words: "10 °C ahead, about 4 min" });
    expect(paceWords({ ...RAMP, behindC: 25 }, "F")?.words).toBe("45 °F behind, about 10 min");
  });

  test("a few degrees are no word worth", () => {
    expect(paceWords({ ...RAMP, behindC: 3 }, "C")?.words).toBe("With its programme");
  });

  test("of a hold it is told which way, also of one that it cooled to", () => {
    const hold: WatchedPlace = { ...RAMP, doing: "hold", askedCPerHour: null, behindC: 8 };
    expect(paceWords(hold, "C")?.words).toBe("8 °C under its hold");
    expect(paceWords({ ...hold, rising: false }, "C")?.words).toBe("8 °C over its hold");
  });

  test("nothing is said where nothing is asked", () => {
    expect(paceWords({ ...RAMP, doing: "over" }, "C")).toBeNull();
    expect(paceWords({ ...RAMP, askedCPerHour: null }, "C")).toBeNull();
  });
});

describe("a moment that is only foretold", () => {
  const start = new Date(2026, 10, 25, 8, 0).toISOString();
  const clock = (hour: number, minute: number) =>
    new Date(2026, 10, 25, hour, minute).toLocaleTimeString(undefined, { hour: "2-digit", minute: "2-digit" });

  test("is told as a span, rounded outward by the clock, never narrower than it is", () => {
    // 14:22 to 14:47 → 14:20 to 14:50.
    expect(momentWords({ atMin: 395, fromMin: 382, toMin: 407 }, start, 60)).toBe(
      `between ${clock(14, 20)} and ${clock(14, 50)}`,
    );
  });

  test("a wide one in quarters of an hour; a narrow one as one moment", () => {
    expect(momentWords({ atMin: 400, fromMin: 367, toMin: 433 }, start, 60)).toBe(
      `between ${clock(14, 0)} and ${clock(15, 15)}`,
    );
    expect(momentWords({ atMin: 395, fromMin: 394, toMin: 396.5 }, start, 60)).toBe(`about ${clock(14, 35)}`);
  });

  test("does not begin before now", () => {
    expect(momentWords({ atMin: 395, fromMin: 350, toMin: 407 }, start, 385)).toBe(
      `between ${clock(14, 25)} and ${clock(14, 50)}`,
    );
  });

  test("names the day where it is another", () => {
    const words = momentWords({ atMin: 1200, fromMin: 1190, toMin: 1220 }, start, 60);
    expect(words).toContain(new Date(2026, 10, 26).toLocaleDateString(undefined, { weekday: "short" }));
  });
});

describe("silence", () => {
  const MINUTE = 60_000;
  test("is said after a few minutes and is long after ten", () => {
    expect(silenceWords(2 * MINUTE)).toBeNull();
    expect(silenceWords(5 * MINUTE)).toEqual({ words: "No reading for 5 minutes", isLong: false });
    expect(silenceWords(12 * MINUTE)).toEqual({ words: "No reading for 12 minutes", isLong: true });
  });

  test("a rehearsal's readings come in parts", () => {
    expect(silenceWords(5 * MINUTE, 300)).toBeNull();
    expect(silenceWords(40 * MINUTE, 300)?.isLong).toBe(true);
  });

  test("how long ago, in words", () => {
    expect([20_000, MINUTE, 59 * MINUTE, 185 * MINUTE, 3 * 24 * 60 * MINUTE].map(agoWords)).toEqual([
      "less than a minute",
      "1 minute",
      "59 minutes",
      "3 h 05 min",
      "3 days",
    ]);
  });
});

describe("cones in words", () => {
  const heat: WatchedHeat = { level: null, ladder: 26.4, coneDown: "5", next: "6", towardNext: 0.4, cones: [] };
  test("what is down, and how far the next one is", () => {
    expect(conesWords(heat)).toBe("Cone 5 down, 6 at 40 %");
    expect(conesWords({ ...heat, next: null })).toBe("Cone 5 down");
    expect(conesWords({ ...heat, coneDown: null, next: "022", towardNext: 0 })).toBe("No cone has begun to bend");
    expect(placeOfHeat(heat)).toBe("At the probe");
    expect(placeOfHeat({ ...heat, level: 0 })).toBe("Shelf 1");
  });

  test("is not at a hundred before it is down", () => {
    expect(conesWords({ ...heat, towardNext: 0.9999 })).toBe("Cone 5 down, 6 at 99 %");
  });
});

test("faults that last stand first, danger before the others", () => {
  const fault = (kind: string, sinceMin: number, untilMin: number | null, isDanger: boolean): WatchedFault => ({
    ...{ kind, sinceMin, untilMin, isDanger, found: "", message: "" },
  });
  const all = [
    fault("jump", 10, 14, false),
    fault("stalling", 300, null, false),
    fault("slipped probe", 200, null, true),
    fault("silence", 100, 130, false),
  ];
  const { lasting, over } = faultsInOrder(all);
  expect(lasting.map(({ kind }) => kind)).toEqual(["slipped probe", "stalling"]);
  expect(over.map(({ kind }) => kind)).toEqual(["silence", "jump"]);
});

test("temperatures in her degrees", () => {
  // The boiling point of water, and a difference of as many degrees.
  expect(degreesFigure(100, "F")).toBe("212");
  expect(degreesWords(-100, "F")).toBe("180 °F");
});
