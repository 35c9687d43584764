import { describe, expect, test } from "vitest";
import type { FiringWatch } from "../../../studio/api/watch-contract.ts";
import { asSeries, measuredLines, withLatest } from "../chart/measured-lines.ts";
import { spanFrom, spanUntil } from "../chart/shown-span.ts";
import { deviceNotice } from "../notices/device-notice.ts";
import { curlLine, fitsTopic } from "../readings/send-words.ts";
import { afterKey, typedTemperature } from "../readings/typed-number.ts";
import { minuteOf, studioNowMs } from "./studio-clock.ts";

const START = "2026-11-25T08:00:00.000Z";
const ms = (moment: string): number => Date.parse(moment);
const watch = (now: string, pace = 1): FiringWatch => ({
  ...{ now, pace, startedAt: START, latest: null, place: null, heat: [], faults: [], outlook: null },
});

describe("the studio's clock", () => {
  test("goes on from what the studio said, whatever this device's clock shows", () => {
    const known = { watch: watch("2026-11-25T10:00:00.000Z"), heardMs: ms("2026-11-25T13:00:00.000Z") };
    expect(studioNowMs(known, ms("2026-11-25T13:02:00.000Z"))).toBe(ms("2026-11-25T10:02:00.000Z"));
  });

  test("a rehearsal's runs faster, but never ahead of the world's", () => {
    const known = { watch: watch("2026-11-25T10:00:00.000Z", 300), heardMs: ms("2026-11-25T13:00:00.000Z") };
    expect(studioNowMs(known, ms("2026-11-25T13:00:10.000Z"))).toBe(ms("2026-11-25T10:50:00.000Z"));
    expect(studioNowMs(known, ms("2026-11-25T13:05:00.000Z"))).toBe(ms("2026-11-25T13:05:00.000Z"));
  });

  test("tells the minute of the firing", () => {
    expect(minuteOf(START, ms("2026-11-25T09:30:30.000Z"))).toBe(90.5);
  });
});

describe("measured lines", () => {
  const shown = {
    by: "raw" as const,
    more: null,
    series: [
      { probe: "top", at: [START, "2026-11-25T08:01:00.000Z", "2026-11-25T08:40:00.000Z"], tempC: [20, 24, 160] },
    ],
  };
  test("are not joined over a while in which nothing was read", () => {
    const [series] = asSeries(measuredLines(shown, START));
    expect(series?.minutes).toEqual([0, 1, 20.5, 40]);
    expect(series?.tempC).toEqual([20, 24, Number.NaN, 160]);
  });

  test("an hour's means are an hour apart, and joined", () => {
    const hours = { ...shown, series: [{ probe: "top", at: [START, "2026-11-25T09:00:00.000Z"], tempC: [20, 100] }] };
    expect(asSeries(measuredLines(hours, START), 60)[0]?.minutes).toEqual([0, 60]);
  });

  test("grow by what is heard, each moment once, and by another probe", () => {
    const heard = [
      { at: "2026-11-25T08:40:00.000Z", tempC: 160, probe: "top" },
      { at: "2026-11-25T08:41:00.000Z", tempC: 163, probe: "top" },
      { at: "2026-11-25T08:41:00.000Z", tempC: 90, probe: "floor" },
    ];
    const lines = withLatest(measuredLines(shown, START), heard, START);
    expect(lines.map(({ probe, minutes }) => [probe, minutes])).toEqual([
      ["top", [0, 1, 40, 41]],
      ["floor", [41]],
    ]);
    expect(asSeries(lines).map(({ name }) => name)).toEqual(["measured, top", "measured, floor"]);
  });
});

test("the last hours are shown in steps, so that the chart does not creep", () => {
  expect(spanFrom("hour", 203)).toBe(140);
  expect(spanFrom("hour", 204.9)).toBe(140);
  expect(spanFrom("hours", 100)).toBe(0);
  expect(spanFrom("whole", 900)).toBeNull();
  expect(spanUntil("whole", 900)).toBeNull();
  expect(spanUntil("hour", 203)).toBe(218);
});

describe("a number typed on large keys", () => {
  test("grows by digits, no longer than a kiln is hot, and loses the last one", () => {
    expect(["1", "2", "2", "2"].reduce(afterKey, "")).toBe("1222");
    expect(afterKey("1222", "5")).toBe("1222");
    expect(afterKey("122", "back")).toBe("12");
    expect(afterKey("0", "7")).toBe("7");
  });

  test("is no temperature where it is empty or hotter than any studio kiln", () => {
    expect(typedTemperature("", "C")).toBeNull();
    expect(typedTemperature("1222", "C")).toBe(1222);
    expect(typedTemperature("2232", "C")).toBeNull();
    expect(typedTemperature("2232", "F")).toBe(2232);
  });
});

test("the line for a terminal carries the address, the token and a reading", () => {
  const line = curlLine("http://localhost:7420", "abc");
  expect(line).toContain("http://localhost:7420/api/readings");
  expect(line).toContain("Authorization: Bearer abc");
  expect(JSON.parse(/-d '(.*)'/.exec(line)?.[1] ?? "")).toEqual({ tempC: 1222 });
});

test("a logger's name fits one level of a topic", () => {
  expect(["kiln-shed", "a/b", "a+", "#", ""].map(fitsTopic)).toEqual([true, false, false, false, false]);
});

test("one fault is one notice on this device, and danger stays until it is looked at", () => {
  const notice = {
    ...{ id: "n1", firingId: "f1", firingName: "winter market", kind: "overshoot", since: START, until: null },
    ...{ message: "1240 °C, 20 °C over.", isDanger: true },
  };
  const shown = deviceNotice(notice);
  expect(shown).toMatchObject({ tag: "wareboard-n1", stays: true, path: "/firings/f1/watch" });
  expect(shown.title).toMatch(/^Go to the kiln/);
  expect(deviceNotice({ ...notice, kind: "cone due", isDanger: false }).title).toBe("Look at the cones");
});
