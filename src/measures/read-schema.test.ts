import fc from "fast-check";
import { Type } from "typebox";
import { Check } from "typebox/value";
import { describe, expect, test } from "vitest";
import { BadInput } from "./bad-input.ts";
import { readBySchema } from "./read-schema.ts";

const closed = { additionalProperties: false };
const Vessel = Type.Object(
  {
    shape: Type.Literal("round"),
    acrossMm: Type.Number({ exclusiveMinimum: 0, maximum: 5000, description: "Across the inside." }),
  },
  closed,
);
const Crate = Type.Object({ shape: Type.Literal("square"), sideMm: Type.Number({ minimum: 0 }) }, closed);
const Sample = Type.Object(
  {
    format: Type.Literal("sample/1"),
    count: Type.Integer({ minimum: 1 }),
    name: Type.String({ minLength: 1, maxLength: 8 }),
    open: Type.Optional(Type.Boolean()),
    kind: Type.Optional(Type.Union([Type.Literal("bisque"), Type.Literal("glaze")])),
    part: Type.Optional(Type.Union([Vessel, Type.Null()])),
    body: Type.Union([Vessel, Crate]),
    side: Type.Array(Type.Tuple([Type.Number(), Type.Number()]), { minItems: 2, maxItems: 3 }),
  },
  closed,
);
const good = {
  format: "sample/1",
  count: 2,
  name: "jar",
  body: { shape: "round", acrossMm: 90 },
  side: [
    [0, 1],
    [2, 3],
  ],
};

const fault = (change: Record<string, unknown>): string => {
  try {
    readBySchema(Sample, { ...good, ...change });
  } catch (error) {
    if (error instanceof BadInput) return error.message;
    throw error;
  }
  return "none";
};

describe("reading by schema", () => {
  test("gives the same value back where it fits", () => {
    const whole = { ...good, open: true, kind: "glaze", part: null };
    expect(readBySchema(Sample, whole)).toBe(whole);
  });

  test.each([
    [{ format: "sample/2" }, 'format: found "sample/2"; expected "sample/1".'],
    [{ count: 2.5 }, "count: found 2.5; expected a whole number of at least 1."],
    [{ count: 0 }, "count: found 0; expected a whole number of at least 1."],
    [{ count: "2" }, 'count: found "2"; expected a whole number of at least 1.'],
    [{ name: "" }, "name: found no text; expected at least one character."],
    [{ name: "a very long name" }, "name: found 16 characters; expected at most 8."],
    [{ name: 7 }, "name: found 7; expected text."],
    [{ open: "yes" }, 'open: found "yes"; expected true or false.'],
    [{ kind: "raku" }, 'kind: found "raku"; expected "bisque" or "glaze".'],
    [{ part: true }, "part: found true; expected an object { … }."],
    [{ part: { shape: "round", acrossMm: -3 } }, /^part\.acrossMm: found -3; expected a number of millimetres above 0/],
    [{ body: { shape: "oval" } }, 'body.shape: found "oval"; expected "round" or "square".'],
    [{ body: {} }, 'body.shape: found nothing; expected "round" or "square".'],
    [{ body: { shape: "round" } }, "body.acrossMm: found nothing; expected a number (Across the inside)."],
    [{ body: { shape: "round", acrossMm: Number.NaN } }, /^body\.acrossMm: found NaN/],
    [{ body: { shape: "round", acrossMm: Number.POSITIVE_INFINITY } }, /^body\.acrossMm: found Infinity/],
    [{ body: { shape: "round", acrossMm: "3 1/2 in" } }, /found "3 1\/2 in"; .* \(3 1\/2 in is 88\.9\)\.$/],
    [
      { body: { shape: "round", acrossCm: 9 } },
      /^body\.acrossCm: found a field this format does not have; expected acrossMm/,
    ],
    [{ colour: "red" }, /^colour: found a field this format does not have; expected one of format, count/],
    [{ toString: 1 }, /^toString: found a field this format does not have/],
    [{ nmae: "jar" }, "nmae: found a field this format does not have; expected name."],
    [{ side: [[0, 1]] }, "side: found a list of 1; expected at least 2."],
    [{ side: Array(4).fill([0, 1]) }, "side: found a list of 4; expected at most 3."],
    [{ side: [[0, 1], [2]] }, "side[1]: found a list of 1; expected at least 2."],
    [
      {
        side: [
          [0, 1, 2],
          [3, 4],
        ],
      },
      "side[0]: found a list of 3; expected at most 2.",
    ],
    [
      {
        side: [
          [0, 1],
          [2, null],
        ],
      },
      "side[1][1]: found null; expected a number.",
    ],
    [{ side: "steep" }, 'side: found "steep"; expected a list [ … ].'],
  ])("names the field, what was found and what would do: %j", (change, message) => {
    if (typeof message === "string") expect(fault(change)).toBe(message);
    else expect(fault(change)).toMatch(message);
  });

  test("tells a file of another format by its format, before any field it does not know", () => {
    expect(fault({ format: "other/1", alien: 1 })).toMatch(/^format: found "other\/1"; expected "sample\/1"/);
  });

  test.each([[null], [[]], [3], ["text"], [undefined]])("refuses %j for a whole file", (value) => {
    expect(() => readBySchema(Sample, value)).toThrow(/^found .*; expected an object { … }\.$/);
  });

  test("names a field for whatever will not do: never only that the shape is wrong", () => {
    const anyValue = fc.oneof(fc.constantFrom("round", "square", "sample/1", 3, -1, null, true), fc.jsonValue());
    fc.assert(
      fc.property(fc.constantFrom(...Object.keys(good), "open", "kind", "part", "extra"), anyValue, (field, value) => {
        const changed = { ...good, [field]: value };
        const message = fault({ [field]: value });
        if (Check(Sample, changed)) expect(message).toBe("none");
        else expect(message.startsWith(field)).toBe(true);
      }),
      { numRuns: 500 },
    );
  });
});
