import { type Static, type TSchema, Type } from "typebox";
import { Compile } from "typebox/compile";
import { instantOf } from "../../firing/tariff/instant.ts";
import { BadInput, shown } from "../../measures/bad-input.ts";
import { readBySchema } from "../../measures/read-schema.ts";
import { celsiusFromFahrenheit } from "../../measures/temperature.ts";
import type { SentReading } from "../../studio/api/readings-contract.ts";
import type { Reading } from "../../studio/records/reading.ts";

/** A logger that was away sends what it missed in parts of this many. */
export const MOST_AT_ONCE = 5000;
/** A clock that runs further ahead than this is not believed. */
const AHEAD_MS = 5 * 60_000;

const fields = {
  at: Type.Optional(Type.String({ maxLength: 40, description: "A moment with its offset; now where left out." })),
  tempC: Type.Optional(Type.Number({ description: "Degrees Celsius." })),
  tempF: Type.Optional(Type.Number({ description: "Degrees Fahrenheit, instead." })),
};
const One = Type.Object(fields, { additionalProperties: false });
const Many = Type.Object(
  { readings: Type.Array(One, { minItems: 1, maxItems: MOST_AT_ONCE }) },
  { additionalProperties: false },
);
/** What is typed in names its probe. */
export const TypedReadingSchema = Type.Object(
  { ...fields, probe: Type.Optional(Type.String({ minLength: 1, maxLength: 120 })) },
  { additionalProperties: false },
);
/** For the OpenAPI document. */
export const SentReadings = Type.Union([One, Many]);

const [isOne, isMany] = [Compile(One), Compile(Many)];

/**
 * Reads what a logger sent.
 *
 * @param body one reading, or `{ readings: […] }`
 * @param now the moment, ISO 8601
 * @throws BadInput naming the reading and the field
 */
export function readSent(body: unknown, now: string): Reading[] {
  const many = typeof body === "object" && body !== null && "readings" in body;
  if (!many) return [readOne(held(One, isOne, body), "", now)];
  return held(Many, isMany, body).readings.map((sent, i) => readOne(sent, `readings[${i}]`, now));
}

/** One reading: its moment in UTC and degrees Celsius. @throws BadInput naming the field */
export function readOne({ at, tempC, tempF }: SentReading, path: string, now: string): Reading {
  const field = (name: string): string => (path === "" ? name : `${path}.${name}`);
  if ((tempC === undefined) === (tempF === undefined)) {
    const found = tempC === undefined ? "no temperature" : "both tempC and tempF";
    throw new BadInput({ code: "one-temperature", path, found, expected: "tempC or tempF, one of the two" });
  }
  const celsius = tempC ?? celsiusFromFahrenheit(tempF as number);
  return { at: at === undefined ? now : momentSent(at, field("at"), now), tempC: celsius };
}

function held<Schema extends TSchema>(schema: Schema, is: { Check(value: unknown): boolean }, value: unknown) {
  return is.Check(value) ? (value as Static<Schema>) : readBySchema(schema, value);
}

function momentSent(text: string, path: string, now: string): string {
  // Without its offset it is the clock of nobody knows where.
  if (!/(Z|[+-]\d{2}:?\d{2})$/i.test(text)) {
    const expected = "a moment with its offset from UTC, such as 2026-11-25T09:47:32Z or 2026-11-25T10:47:32+01:00";
    throw new BadInput({ code: "not-a-moment", path, found: shown(text), expected });
  }
  const fraction = /\.(\d+)/.exec(text)?.[1] ?? "0";
  const ms = instantOf(text, "UTC", path) + Math.floor(Number(`0.${fraction}`) * 1000);
  const aheadMs = ms - Date.parse(now);
  if (aheadMs <= AHEAD_MS) return new Date(ms).toISOString();
  throw new BadInput({
    code: "clock-ahead",
    path,
    found: `${shown(text)}, ${Math.round(aheadMs / 60_000)} min ahead of the studio's clock`,
    expected: "a moment that has been; set the logger's clock, or leave `at` out and it is taken as now",
  });
}
