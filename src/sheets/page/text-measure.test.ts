import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import fc from "fast-check";
import PDFDocument from "pdfkit";
import { describe, expect, test } from "vitest";
import { BOLD_WIDTHS, REGULAR_WIDTHS } from "./font-widths.ts";
import { mmOfPoints } from "./sheet-style.ts";
import { inFont, shortenedText, textWidthMm, wrapText } from "./text-measure.ts";

const require = createRequire(import.meta.url);

describe("the width table", () => {
  // The font files themselves, read by the library that sets the PDF.
  test.each([
    ["regular", 400, REGULAR_WIDTHS],
    ["bold", 700, BOLD_WIDTHS],
  ] as const)("agrees with the font files, %s", (_, weight, widths) => {
    const document = new PDFDocument();
    const fonts = ["latin", "latin-ext"].map((part) =>
      readFileSync(
        require.resolve(`@fontsource/atkinson-hyperlegible/files/atkinson-hyperlegible-${part}-${weight}-normal.woff`),
      ),
    );
    let counted = 0;
    for (const [width, characters] of Object.entries(widths)) {
      for (const character of characters) {
        const measured = fonts.map((font) => document.font(font).fontSize(1000).widthOfString(character));
        expect(measured, character).toContain(Number(width));
        counted += 1;
      }
    }
    expect(counted).toBeGreaterThan(290);
  });

  test("has every sign the sheet itself writes", () => {
    for (const sign of "0123456789½¼¾°×—–’“”…·µ³§±ft/:;,.()%&<>") expect(inFont(sign), sign).toBe(true);
  });
});

describe("setting text", () => {
  test("a known width: ten zeros in the regular weight, 648 thousandths each", () => {
    expect(textWidthMm("0000000000", 10, "regular")).toBeCloseTo(6.48 * mmOfPoints(10), 9);
  });

  test("no line is wider than its column, and no letter is lost", () => {
    fc.assert(
      fc.property(
        fc.string({ unit: "grapheme-ascii", maxLength: 200 }),
        fc.integer({ min: 20, max: 90 }),
        (text, width) => {
          const lines = wrapText(text, width, 11, "bold");
          for (const line of lines) expect(textWidthMm(line, 11, "bold")).toBeLessThanOrEqual(width);
          const bare = (each: string): string => each.replaceAll(/\s/g, "");
          expect(bare(lines.join(""))).toBe(bare(text));
        },
      ),
    );
  });

  test("a number is never parted from its unit or its fraction", () => {
    for (let width = 30; width < 80; width += 1) {
      const lines = wrapText("posts of 3 15/16 in and of 100 mm at 4 o’clock, 3 × 25 mm", width, 11);
      for (const line of lines) expect(line).not.toMatch(/\d$|×$|^(mm|in|o’clock|15\/16)/);
    }
  });

  test("shortened text fits and shows that it was cut", () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 120 }), fc.integer({ min: 10, max: 100 }), (text, width) => {
        const short = shortenedText(text, width, 11);
        expect(textWidthMm(short, 11, "regular")).toBeLessThanOrEqual(width);
        expect(short === text || short.endsWith("…")).toBe(true);
      }),
    );
  });
});
