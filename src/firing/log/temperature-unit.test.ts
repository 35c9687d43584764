import { expect, test } from "vitest";
import { readLog } from "./read-log.ts";

/** A climb of 20 degrees every five minutes, some of its readings changed. */
const log = (header: string, changed: Readonly<Record<number, number>> = {}, count = 110): string =>
  [header, ...Array.from({ length: count }, (_, i) => `${i * 5},${changed[i] ?? 68 + i * 20}`)].join("\n");

test("a column named for °C that holds °F is refused, and says what it would be", () => {
  // 68 + 109 × 20 = 2248, which is 1231 °C; 40 readings are above 1450.
  expect(() => readLog(log("elapsedMin,tempC"))).toThrow(
    "tempC: found 40 readings up to 2248 °C; expected a kiln's temperatures, up to 1450 °C; if these are °F, it is 1231 °C",
  );
});

test("a few readings of a broken contact are no other unit", () => {
  const reading = readLog(log("elapsedMin,tempC", { 20: 1600, 31: 1700 }, 55));
  expect(reading.kind).toBe("log");
  if (reading.kind === "log") expect(reading.dropped).toHaveLength(2);
});

test("the same numbers named for °F, or not named at all, are read", () => {
  for (const header of ["elapsedMin,tempF", "elapsedMin,temp"]) {
    const reading = readLog(log(header));
    if (reading.kind !== "log") throw new Error(reading.question);
    expect(Math.max(...(reading.probes[0]?.tempC ?? []))).toBeCloseTo(((68 + 109 * 20 - 32) * 5) / 9, 6);
  }
});
