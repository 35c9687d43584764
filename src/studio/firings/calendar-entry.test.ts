import ICAL from "ical.js";
import { expect, test, vi } from "vitest";
import { calendarEntry, calendarMoments } from "./calendar-entry.ts";
import { firedFiring } from "./testing/fired-load.ts";

const NOW = "2026-11-25T12:00:00.000Z";
const planned = firedFiring({
  ...{ name: "before the market; glaze, cone 6", state: "planned", startedAt: null, endedAt: null, meterReadings: [] },
  plannedStartAt: "2026-11-26T21:00:00.000Z",
});
delete (planned as { shutOffAt?: string }).shutOffAt;

/** Read by another program than wrote it: ical.js, an independent RFC 5545 parser. */
const parsed = (text: string) =>
  new ICAL.Component(ICAL.parse(text)).getAllSubcomponents("vevent").map((each) => new ICAL.Event(each));

test("a planned firing's start, looks, shut-off and earliest opening are in the file, in UTC", () => {
  const events = parsed(calendarEntry(planned, NOW, "Window Bench"));
  expect(
    events.map(({ summary, startDate, endDate }) => [
      summary,
      startDate.toJSDate().toISOString(),
      endDate.toJSDate().toISOString(),
    ]),
  ).toEqual([
    // Eight hours foretold, twelve more until 95 °C.
    ["Firing: before the market; glaze, cone 6", "2026-11-26T21:00:00.000Z", "2026-11-27T05:00:00.000Z"],
    ["Look at the kiln: before the market; glaze, cone 6", "2026-11-26T22:00:00.000Z", "2026-11-26T22:15:00.000Z"],
    ["Look at the kiln: before the market; glaze, cone 6", "2026-11-27T04:15:00.000Z", "2026-11-27T04:30:00.000Z"],
    ["Shut-off: before the market; glaze, cone 6", "2026-11-27T05:00:00.000Z", "2026-11-27T05:15:00.000Z"],
    [
      "May be opened at the earliest: before the market; glaze, cone 6",
      "2026-11-27T17:00:00.000Z",
      "2026-11-27T18:00:00.000Z",
    ],
  ]);
  expect(events[0]?.description).toMatch(/licensed electrician come first.*never switches a kiln/s);
  expect(new Set(events.map(({ uid }) => uid)).size).toBe(5);
});

test("its shape is RFC 5545's: lines ended by CRLF and at most 75 octets long, what must be there, times with Z", () => {
  const text = calendarEntry(planned, NOW);
  expect(text.startsWith("BEGIN:VCALENDAR\r\nVERSION:2.0\r\n")).toBe(true);
  const lines = text.split("\r\n");
  expect(lines.filter((line) => line.includes("\n"))).toEqual([]);
  // RFC 5545, 3.1: "Lines of text SHOULD NOT be longer than 75 octets, excluding the line break."
  for (const line of lines) expect(new TextEncoder().encode(line).length).toBeLessThanOrEqual(75);
  expect(lines.filter((line) => line.startsWith("PRODID:"))).toHaveLength(1);
  // 3.6.1: every event has a DTSTAMP and a UID; 3.3.5: UTC is written with a Z.
  for (const name of ["DTSTAMP", "UID", "DTSTART", "DTEND"]) {
    expect(lines.filter((line) => line.startsWith(`${name}:`))).toHaveLength(5);
  }
  for (const line of lines.filter((each) => /^DT(START|END|STAMP):/.test(each))) expect(line).toMatch(/:\d{8}T\d{6}Z$/);
  // 3.3.11: a semicolon and a comma in a text are escaped.
  expect(text.replaceAll("\r\n ", "")).toContain("before the market\\; glaze\\, cone 6");
});

test("written again it moves the same events; once it has started it goes by what happened", () => {
  const before = parsed(calendarEntry(planned, NOW)).map(({ uid }) => uid);
  const started = {
    ...planned,
    state: "cooling" as const,
    startedAt: "2026-11-26T21:30:00.000Z",
    shutOffAt: "2026-11-27T06:10:00.000Z",
  };
  const events = parsed(calendarEntry(started, NOW));
  expect(events.map(({ uid }) => uid)).toEqual(before);
  expect(events[4]?.startDate.toJSDate().toISOString()).toBe("2026-11-27T18:10:00.000Z");
  expect(calendarEntry(planned, NOW)).toBe(calendarEntry(planned, NOW));
});

test("without a start, or without a foretelling, there is nothing to enter, and she is told which", () => {
  const { plannedStartAt: _, ...open } = planned;
  expect(() => calendarMoments(open)).toThrow(expect.objectContaining({ path: 'firing "f".plannedStartAt' }));
  const { foretold: __, ...untold } = planned;
  expect(() => calendarMoments(untold)).toThrow(expect.objectContaining({ path: 'firing "f".foretold' }));
  const never = {
    ...planned,
    foretold: { ...(planned.foretold as NonNullable<typeof planned.foretold>), coolHours: { "95": null } },
  };
  expect(calendarMoments(never)).toHaveLength(4);
});

test("on a phone that reaches the studio by http, where crypto has no randomUUID, it is the same file", () => {
  const here = calendarEntry(planned, NOW);
  for (const crypto of [{ getRandomValues: () => {} }, undefined]) {
    vi.stubGlobal("crypto", crypto);
    try {
      expect(calendarEntry(planned, NOW)).toBe(here);
      expect((globalThis.crypto as { randomUUID?: unknown } | undefined)?.randomUUID).toBeUndefined();
    } finally {
      vi.unstubAllGlobals();
    }
  }
  expect(globalThis.crypto.randomUUID()).toMatch(/^[0-9a-f-]{36}$/);
});
