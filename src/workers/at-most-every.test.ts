import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { atMostEvery } from "./at-most-every.ts";

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

describe("telling at most every so often", () => {
  it("tells the first at once, of many only the last, and nothing twice", () => {
    const told: number[] = [];
    const { tell } = atMostEvery(100, (value: number) => told.push(value));
    for (const value of [1, 2, 3]) tell(value);
    expect(told).toEqual([1]);
    vi.advanceTimersByTime(100);
    expect(told).toEqual([1, 3]);
    tell(4);
    vi.advanceTimersByTime(1000);
    expect(told).toEqual([1, 3, 4]);
    tell(5);
    expect(told).toEqual([1, 3, 4, 5]);
  });

  it("tells no more once it has ended", () => {
    const told: number[] = [];
    const { tell, end } = atMostEvery(100, (value: number) => told.push(value));
    tell(1);
    tell(2);
    end();
    vi.advanceTimersByTime(1000);
    expect(told).toEqual([1]);
  });
});
