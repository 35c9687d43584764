import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { element, group, svgText } from "./svg-writer.ts";
import { readSvg } from "./testing/read-svg.ts";

describe("the SVG writer", () => {
  test("escapes text and attributes so that any name a potter types is well-formed and comes back as typed", () => {
    fc.assert(
      fc.property(fc.string({ unit: "grapheme" }), (text) => {
        const read = readSvg(svgText(group([element("text", { "data-name": text }, text)])));
        expect(read.children[0]?.text).toBe(text);
        expect(read.children[0]?.attributes["data-name"]).toBe(text);
      }),
    );
  });

  test("any string at all, half a surrogate pair or a control character included, is well-formed", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary" }), (text) => {
        const halves = `${text}\ud800\u0000\uffff`;
        expect(() => readSvg(svgText(element("text", { id: halves }, halves)))).not.toThrow();
      }),
    );
  });

  test("writes numbers to a thousandth, without exponent or negative zero", () => {
    expect(svgText(element("circle", { r: 1e-9, cx: -1e-9, cy: 12.34567 }))).toBe('<circle r="0" cx="0" cy="12.346"/>');
  });

  test("leaves out attributes that are not there and refuses numbers that are none", () => {
    expect(svgText(element("rect", { x: null, y: undefined, width: 2 }))).toBe('<rect width="2"/>');
    expect(() => svgText(element("rect", { x: Number.NaN }))).toThrow(RangeError);
  });
});
