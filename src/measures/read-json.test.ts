import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { BadInput } from "./bad-input.ts";
import { readJson } from "./read-json.ts";

const fault = (text: string): string => {
  try {
    readJson(text, "load.json");
  } catch (error) {
    if (error instanceof BadInput) return error.message;
    throw error;
  }
  return "none";
};
const NOT_JSON = "expected JSON: names and text in double quotes, no comments, no trailing commas.";

describe("reading JSON text", () => {
  test("gives what JSON.parse gives, a byte order mark or not", () => {
    fc.assert(
      fc.property(fc.json(), (text) => {
        expect(readJson(text, "a")).toEqual(JSON.parse(text));
        expect(readJson(`\uFEFF${text}`, "a")).toEqual(JSON.parse(text));
      }),
    );
  });

  test("knows a file cut off anywhere, and on which line", () => {
    const text = JSON.stringify(
      { kiln: { depthMm: 460.5, name: "back\\room", open: true }, ware: [null, -1e-3] },
      null,
      2,
    );
    for (let length = 1; length < text.length; length++) {
      const line = text.slice(0, length).split("\n").length;
      expect(fault(text.slice(0, length))).toBe(
        `load.json: found a file cut off on line ${line}; expected a whole JSON file.`,
      );
    }
  });

  test("knows numbers that JSON has not", () => {
    const said = (word: string) => `load.json: found ${word} on line 2; expected a number that JSON can hold.`;
    for (const word of ["NaN", "-NaN", "Infinity", "-Infinity"]) {
      expect(fault(`{ "a": 1,\n"b": ${word} }`)).toBe(said(word));
      expect(fault(`[1,\n${word}]`)).toBe(said(word));
    }
  });

  test("does not blame a word inside a text for a fault elsewhere", () => {
    expect(fault('{ "name": "the NaN kiln",\n"depth": 4x }')).toBe(
      `load.json: found text that is not JSON on line 2; ${NOT_JSON}`,
    );
  });

  test.each([
    ["a comment", '{\n"a": 1, // wide\n"b": 2 }', 2],
    ["a comment at the top", '// mine\n{ "a": 1 }', 1],
    ["a trailing comma", '{ "a": [1,\n2,\n] }', 3],
    ["single quotes", "{\n'a': 1 }", 2],
    ["a bare name", "{\n\n  a: 1 }", 3],
    ["two files in one", '{ "a": 1 }\n{ "a": 1 }', 2],
    ["a unit after a number", '{ "heightMm":\n65 mm }', 2],
  ])("says on which line %s stands", (_what, text, line) => {
    expect(fault(text)).toBe(`load.json: found text that is not JSON on line ${line}; ${NOT_JSON}`);
  });

  test("knows an empty file", () => {
    for (const text of ["", " \n\t", "\uFEFF"]) {
      expect(fault(text)).toBe("load.json: found an empty file; expected a JSON file.");
    }
  });
});
