import fc from "fast-check";
import { expect, test } from "vitest";
import { BadInput } from "../../measures/bad-input.ts";
import { heatWork } from "../heat-work/heat-work.ts";
import type { LogOptions, LogQuestion, TemperatureLog } from "./log-reading.ts";
import { probeCurve, readLog } from "./read-log.ts";
import { type Dialect, type KnownFiring, written } from "./testing/dialects.ts";

function log(text: string, options: LogOptions = {}): TemperatureLog {
  const reading = readLog(text, options);
  if (reading.kind === "question") throw new Error(`asked: ${reading.question}`);
  return reading;
}
function question(text: string, options: LogOptions = {}): LogQuestion {
  const reading = readLog(text, options);
  if (reading.kind === "log") throw new Error("did not ask");
  return reading;
}
const csv = (header: string, rows: readonly string[]): string => [header, ...rows].join("\n");

/** A plain firing: up at 100 °C/h, down again, a reading every few minutes. */
const plain = (stepMin: number, count: number, from = 20): number[] =>
  Array.from({ length: count }, (_, n) => {
    const minute = n * stepMin;
    const peakAt = (count * stepMin) / 2;
    return from + (100 / 60) * (minute < peakAt ? minute : 2 * peakAt - minute);
  });

const dialects: fc.Arbitrary<Dialect> = fc
  .record({
    separator: fc.constantFrom(",", ";", "\t"),
    decimal: fc.constantFrom(".", ","),
    time: fc.constantFrom(
      "elapsedMin",
      "hours",
      "seconds",
      "h:mm:ss",
      "iso",
      "iso-zoned",
      "day-first",
      "points",
      "month-first-12h",
      "date-and-time",
      "time-of-day",
    ),
    unit: fc.constantFrom("C", "F"),
    unitIn: fc.constantFrom("header", "cell"),
    preamble: fc.boolean(),
    newline: fc.constantFrom("\n", "\r\n"),
    extraColumn: fc.boolean(),
  } as const)
  .map((dialect) => dialect as Dialect);

const firings: fc.Arbitrary<KnownFiring> = fc
  .record({
    // From 2020 on, any minute of any year's first eleven months; the log may pass midnight, a month's end.
    startMin: fc.integer({ min: 26_297_280, max: 30_000_000 }),
    hours: fc.integer({ min: 3, max: 30 }),
    count: fc.integer({ min: 30, max: 120 }),
    probes: fc.integer({ min: 1, max: 3 }),
    peakC: fc.integer({ min: 600, max: 1300 }),
  })
  .map(({ startMin, hours, count, probes, peakC }) => ({
    startMin,
    minutes: Array.from({ length: count }, (_, n) => (n * Math.round((hours * 3600) / count)) / 60),
    probes: Array.from({ length: probes }, (_, probe) =>
      Array.from({ length: count }, (_, n) => {
        const rise = Math.min(1, (2 * n) / count) - Math.max(0, (2 * n) / count - 1) * 0.5;
        return 20 + probe * 3 + (peakC - 20) * rise;
      }),
    ),
  }));

test("the same firing written in any dialect is the same log", () => {
  fc.assert(
    fc.property(firings, dialects, (firing, dialect) => {
      const found = log(written(firing, dialect));
      expect(found.minutes.length).toBe(firing.minutes.length);
      found.minutes.forEach((minute, n) => {
        expect(Math.abs(minute - (firing.minutes[n] as number))).toBeLessThan(0.6 / 60);
      });
      expect(found.probes.length).toBe(firing.probes.length);
      found.probes.forEach((probe, i) => {
        probe.tempC.forEach((celsius, n) => {
          expect(Math.abs(celsius - ((firing.probes[i] as number[])[n] as number))).toBeLessThan(0.01);
        });
      });
      expect(found.dropped).toEqual([]);
    }),
    { numRuns: 400 },
  );
});

test("reads the published format as it stands", () => {
  const found = log(
    csv(
      "elapsedMin,tempC,top",
      plain(5, 200).map((celsius, n) => `${n * 5},${celsius.toFixed(1)},${celsius.toFixed(1)}`),
    ),
  );
  expect(found.probes.map((probe) => probe.name)).toEqual(["tempC", "top"]);
  expect(found.notes).toEqual([]);
  expect(found.startedAt).toBeNull();
});

test("asks whether degrees are C or F where both are possible, and only then", () => {
  const rows = (temps: readonly number[]): string =>
    csv(
      "minutes;temp",
      temps.map((value, n) => `${n * 10};${value.toFixed(0)}`),
    );
  const open = plain(10, 140, 68);
  const asked = question(rows(open));
  expect(asked.about).toBe("temperature");
  expect(asked.choices.map((choice) => choice.means).join(" ")).toMatch(/firing to \d+ °C .*firing to \d+ °F/);
  expect(log(rows(open), { temperature: "F" }).probes[0]?.tempC[0]).toBeCloseTo(20, 5);
  // 2232 °F is cone 6; 2232 °C is no kiln. A log that begins at 20 °F begins in no room.
  expect(log(rows(plain(10, 140, 68).map((value) => value * 1.8))).notes.join()).toMatch(/Read as °F/);
  expect(log(rows(plain(10, 140, 20))).notes.join()).toMatch(/Read as °C/);
});

test("asks for a unit of time only where several make a firing", () => {
  const counted = (step: number): string =>
    csv(
      "time,tempC",
      plain(5, 150).map((celsius, n) => `${n * step},${celsius}`),
    );
  expect(log(counted(300)).notes.join()).toMatch(/read as seconds/);
  expect(log(counted(5)).notes.join()).toMatch(/read as minutes/);
  expect(log(counted(0.0833)).notes.join()).toMatch(/read as hours/);
  const asked = question(counted(36));
  expect(asked.about).toBe("timeUnit");
  expect(log(counted(36), asked.choices[0]?.option).minutes.at(-1)).toBeCloseTo((149 * 36) / 60, 3);
});

test("a date that can be read two ways stays open where the hours do not depend on it", () => {
  const times = Array.from(
    { length: 60 },
    (_, n) => `03/04/2026 ${String(8 + Math.floor(n / 6)).padStart(2, "0")}:${(n % 6) * 10 || "00"}`,
  );
  const text = csv(
    "time,tempC",
    plain(10, 60).map((celsius, n) => `${times[n]},${celsius}`),
  );
  const found = log(text);
  expect(found.minutes.at(-1)).toBe(590);
  expect(found.startedAt).toBeNull();
  expect(found.notes.join()).toMatch(/can be read two ways/);
  expect(log(text, { dateOrder: "day-first" }).startedAt).toBe("2026-04-03T08:00:00");
});

test("finds which number is the day by how the days follow one another, and asks where neither fits a firing", () => {
  const night = (from: string, to: string): string => {
    const at = (n: number): string => `${n < 12 ? from : to} ${String((12 + n) % 24).padStart(2, "0")}:00`;
    return csv(
      "time,tempC",
      plain(60, 24).map((celsius, n) => `${at(n)},${celsius}`),
    );
  };
  expect(log(night("01/02/2026", "02/02/2026")).startedAt).toBe("2026-02-01T12:00:00");
  expect(log(night("02/01/2026", "02/02/2026")).startedAt).toBe("2026-02-01T12:00:00");
  expect(log(night("31/01/2026", "01/02/2026")).minutes.at(-1)).toBe(23 * 60);
  const asked = question(night("01/03/2026", "09/03/2026"));
  expect(asked.about).toBe("dateOrder");
  expect(asked.choices.map((choice) => choice.means).join()).toMatch(/191.0 hours/);
});

test("goes on past midnight where the clock has no date", () => {
  const rows = plain(10, 100).map((celsius, n) => {
    const minute = (18 * 60 + n * 10) % 1440;
    return `${Math.floor(minute / 60)}:${String(minute % 60).padStart(2, "0")}:00,${celsius}`;
  });
  expect(log(csv("clock,tempC", rows)).minutes.at(-1)).toBe(990);
});

const localRows = (jumpAtMin: number, jumpMin: number, temps: readonly number[]): string =>
  csv(
    "time,tempC",
    temps.map((celsius, n) => {
      const elapsed = n * 5;
      const at = new Date((29_578_200 + 22 * 60 + elapsed + (elapsed >= jumpAtMin ? jumpMin : 0)) * 60_000);
      return `${at.toISOString().slice(0, 16).replace("T", " ")},${celsius.toFixed(1)}`;
    }),
  );

test("a clock put back or forward for daylight saving does not bend the curve", () => {
  const temps = plain(5, 200);
  const straight = log(localRows(1e9, 0, temps));
  const back = log(localRows(200, -60, temps));
  expect(back.minutes).toEqual(straight.minutes);
  expect(back.notes.join()).toMatch(/put back an hour/);
  const forward = log(localRows(200, 60, temps));
  expect(forward.minutes).toEqual(straight.minutes);
  expect(forward.notes.join()).toMatch(/put forward an hour/);
});

test("an hour that did pass in the kiln stays, and where the kiln cannot tell it asks", () => {
  const temps = plain(5, 200);
  const passed = temps.map((celsius, n) => (n * 5 >= 200 ? celsius + 100 : celsius));
  expect(log(localRows(200, 60, passed)).minutes.at(-1)).toBe(199 * 5 + 60);
  const held = temps.map((celsius, n) => (n > 30 && n < 60 ? 271 : celsius));
  const asked = question(localRows(200, 60, held));
  expect(asked.about).toBe("missingHour");
  expect(log(localRows(200, 60, held), { missingHour: "no-readings" }).minutes.at(-1)).toBe(199 * 5 + 60);
  expect(log(localRows(200, 60, held), { missingHour: "clock-change" }).minutes.at(-1)).toBe(199 * 5);
});

test("leaves out repeats, broken readings and spikes, says which and why, and keeps the rest", () => {
  const temps = plain(5, 200).map((celsius) => celsius.toFixed(1));
  const rows = temps.map((celsius, n) => `${n * 5},${celsius}`);
  rows[50] = "250,1999";
  rows[60] = "300,ERR";
  rows[70] = "350,";
  rows.splice(80, 0, rows[79] as string);
  rows[100] = "3,500.0";
  rows[120] = "595,25.0";
  const text = csv("elapsedMin,tempC", rows);
  const found = log(text);
  const why = (line: number): string | undefined => found.dropped.find((each) => each.line === line)?.why;
  expect(found.dropped.map((each) => each.line)).toEqual([52, 62, 72, 82, 102, 122]);
  expect(why(52)).toMatch(/no temperature/);
  expect(why(82)).toMatch(/same time/);
  expect(why(102)).toMatch(/before that of the reading above/);
  expect(why(122)).toMatch(/spike/);
  const clean = heatWork(
    probeCurve(
      log(
        csv(
          "elapsedMin,tempC",
          temps.map((celsius, n) => `${n * 5},${celsius}`),
        ),
      ),
    ),
  );
  expect(heatWork(probeCurve(found)).ladder).toBeCloseTo(clean.ladder, 2);
});

test("one slip of the clock forward costs one reading, not the rest of the log", () => {
  const rows = plain(5, 200).map((celsius, n) => `${n === 70 ? 90_000 : n * 5},${celsius}`);
  const found = log(csv("elapsedMin,tempC", rows));
  expect(found.minutes.length).toBe(199);
  expect(found.dropped).toMatchObject([{ line: 72, why: "its time is after that of the readings below" }]);
});

test("whatever the file holds, it is read, asked about, or refused in a sentence", () => {
  const cell = fc.oneof(
    fc.constantFrom(
      "",
      "time",
      "temp",
      "°F",
      "elapsedMin",
      "12:30",
      "3/4/2026",
      "3.4.2026 5:00 PM",
      "ERR",
      "1,5",
      "1.234,5",
      '"',
      "-",
      "NaN",
      "9999",
    ),
    fc.double({ noNaN: true, min: -1e6, max: 1e6 }).map(String),
    fc.string({ maxLength: 8 }),
  );
  const rows = fc.array(fc.array(cell, { minLength: 1, maxLength: 4 }), { maxLength: 20 });
  fc.assert(
    fc.property(rows, fc.constantFrom(",", ";", "\t"), (table, separator) => {
      try {
        const reading = readLog(table.map((cells) => cells.join(separator)).join("\n"));
        if (reading.kind === "log")
          for (const probe of reading.probes) expect(probe.tempC.length).toBe(reading.minutes.length);
        else expect(reading.choices.length).toBeGreaterThan(1);
      } catch (error) {
        expect(error).toBeInstanceOf(BadInput);
      }
    }),
    { numRuns: 1500 },
  );
});

test("a kiln opened hot is no spike", () => {
  const temps = plain(1, 300).map((celsius, n) => (n < 200 ? celsius : Math.max(100, celsius - 150)));
  expect(
    log(
      csv(
        "elapsedMin,tempC",
        temps.map((celsius, n) => `${n},${celsius}`),
      ),
    ).dropped,
  ).toEqual([]);
});

test("tells of a gap, and of columns it did not read", () => {
  const rows = plain(5, 200)
    .map((celsius, n) => `${n * 5},${celsius},1100,80`)
    .filter((_, n) => n < 40 || n > 80);
  const { notes } = log(csv("elapsedMin,tempC,setpoint,power %", rows));
  expect(notes.join(" ")).toMatch(/No reading for 210 minutes between lines 41 and 42/);
  expect(notes.join(" ")).toMatch(/"setpoint", "power %"/);
});

test("several firings in one file: asks which", () => {
  const one = plain(5, 100).map((celsius, n) => `${n * 5},${celsius}`);
  const text = csv("elapsedMin,tempC", [...one, ...one]);
  expect(question(text).choices.length).toBe(2);
  expect(log(text, { firing: 2 }).minutes.length).toBe(100);
});

test("asks which column is the temperature where no name tells", () => {
  const text = csv(
    "elapsedMin,A,B",
    plain(5, 100).map((celsius, n) => `${n * 5},${celsius},${n}`),
  );
  const asked = question(text);
  expect(asked.about).toBe("probes");
  expect(log(text, asked.choices[0]?.option).probes.map((probe) => probe.name)).toEqual(["A"]);
});

test("thousands separators are no decimals", () => {
  const rows = plain(5, 300).map((celsius, n) => `${n * 5};${Math.round(celsius).toLocaleString("en-US")}`);
  const peak = Math.max(...log(csv("elapsedMin;tempC", rows)).probes[0]!.tempC);
  expect(peak).toBeGreaterThan(1200);
});

test("the file is never altered, and a hundred thousand readings are read", () => {
  const rows = Array.from({ length: 100_000 }, (_, n) => `${n},${(20 + n / 100).toFixed(2)}`);
  const text = csv("time (s),temp (°C)", rows);
  const before = text.length;
  expect(log(text).minutes.length).toBe(100_000);
  expect(text.length).toBe(before);
});

test.each([
  ["", /an empty file/],
  ["hello", /no rows of a time and a temperature/],
  ["elapsedMin,tempC\n0,20\n1,21\n2,22", /found 3 readings; expected .*at least 5/],
  ["elapsedMin,power\n0,20\n1,21\n2,22\n3,23\n4,5", /a column of temperatures/],
  ["PK\u0003\u0004\u0000\u0000", /not text/],
  [
    csv(
      "min,tempC",
      plain(5, 100).map((celsius, n) => `${n * 5},5,${Math.round(celsius)},1`),
    ),
    /line 2: found 4 cells where the header names 2 columns; expected .* semicolons/,
  ],
  [
    csv(
      "elapsedMin,temp",
      plain(5, 100).map((celsius, n) => `${n * 5},${celsius * 8}`),
    ),
    /up to 1450 °C/,
  ],
])("refuses what is no log: %#", (text, message) => {
  expect(() => readLog(text)).toThrow(message);
});
