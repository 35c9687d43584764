import { describe, expect, test } from "vitest";
import type { Tariff } from "../../../firing/tariff/tariff.ts";
import { openAfterHoursOf } from "../../../studio/firing-start.ts";
import { prediction } from "../testing/example-firing.ts";
import { startFor } from "./start-choices.ts";

const now = "2026-11-25T12:00:00.000Z";
const flat: Tariff = { format: "tariff/1", name: "t", timeZone: "UTC", pricePerKWh: 0.3 };
const night: Tariff = { ...flat, slots: [{ name: "night", from: "22:00", to: "08:00", pricePerKWh: 0.1 }] };
const facts = (tariff: Tariff | null, lidHours: number | null = 10) => ({
  ...{ prediction: prediction(lidHours), tariff, now },
});

describe("when to switch it on", () => {
  test("the lid waits for the firing and the cooling after it", () => {
    expect(openAfterHoursOf(prediction(10))).toBe(20);
    expect(openAfterHoursOf(prediction(null))).toBeNull();
  });

  test("at a time: what comes of it, with its cost", () => {
    // 20 kWh at 0.30 are 6.00.
    expect(startFor({ kind: "at", at: "2026-11-25T18:00:00.000Z" }, facts(flat))).toEqual({
      kind: "found",
      startAt: "2026-11-25T18:00:00.000Z",
      shutOffAt: "2026-11-26T04:00:00.000Z",
      openAt: "2026-11-26T14:00:00.000Z",
      cost: expect.closeTo(6, 9),
      saves: null,
    });
  });

  test("whenever she is ready: a flat price tells the cost, hours of the day do not", () => {
    expect(startFor({ kind: "ready" }, facts(flat))).toMatchObject({ startAt: null, cost: expect.closeTo(6, 9) });
    expect(startFor({ kind: "ready" }, facts(night))).toMatchObject({ startAt: null, cost: null });
    expect(startFor({ kind: "ready" }, facts(null))).toMatchObject({ cost: null });
  });

  test("to open it by a time: the latest start on the quarter of an hour that keeps it", () => {
    const answer = startFor({ kind: "open-by", openBy: "2026-11-27T09:10:00.000Z" }, facts(null));
    expect(answer).toMatchObject({ startAt: "2026-11-26T13:00:00.000Z", openAt: "2026-11-27T09:00:00.000Z" });
  });

  test("to open it by a time that cannot be kept: says when it could", () => {
    const answer = startFor({ kind: "open-by", openBy: "2026-11-26T06:00:00.000Z" }, facts(flat));
    expect(answer).toEqual({
      kind: "none",
      reason: "It would not be cool enough by then.",
      earliestOpenAt: "2026-11-26T08:00:00.000Z",
    });
    expect(startFor({ kind: "open-by", openBy: "2026-12-25T06:00:00.000Z" }, facts(flat, null)).kind).toBe("none");
  });

  test("by hours of the day the cheapest start that still opens in time", () => {
    // All ten hours lie in the night from 22:00 to 08:00: 20 kWh at 0.10, where the dearest of the day cost more.
    const answer = startFor({ kind: "open-by", openBy: "2026-11-27T18:00:00.000Z" }, facts(night));
    expect(answer).toMatchObject({ startAt: "2026-11-25T22:00:00.000Z", cost: expect.closeTo(2, 6) });
    expect(answer.kind === "found" && answer.saves).toBeGreaterThan(1);
  });

  test("the cheapest wants a tariff", () => {
    const wish = { kind: "cheapest", until: "2026-11-27T12:00:00.000Z" } as const;
    expect(startFor(wish, facts(null)).kind).toBe("none");
    expect(startFor(wish, facts(night))).toMatchObject({ startAt: "2026-11-25T22:00:00.000Z" });
    expect(startFor({ kind: "cheapest", until: "2026-11-24T12:00:00.000Z" }, facts(night)).kind).toBe("none");
  });
});
