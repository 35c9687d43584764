import { describe, expect, test } from "vitest";
import type { SheetPage } from "../load-sheet.ts";
import { loadSheetPages } from "../load-sheet.ts";
import { centredText, textLine } from "../page/sheet-style.ts";
import { pagesToSvg } from "../pages-to-svg.ts";
import { element, svgText } from "../svg-writer.ts";
import { readSvg } from "../testing/read-svg.ts";
import { handMadeLoad } from "../testing/sheet-cases.ts";
import { withFontRuns } from "./font-runs.ts";
import { pagesToPdf } from "./pages-to-pdf.ts";
import { fontFaceCss } from "./sheet-fonts.ts";
import { readPdf } from "./testing/read-pdf.ts";

const { request, plan } = handMadeLoad();

/** A page with nothing but one line of text. */
const pageSaying = (text: string): SheetPage => {
  const root = element(
    "svg",
    { xmlns: "http://www.w3.org/2000/svg", viewBox: "0 0 210 297" },
    centredText(105, 100, text),
  );
  return { widthMm: 210, heightMm: 297, svg: svgText(root), title: text };
};

describe("the sheet as PDF", () => {
  // ISO 216 A4 is 210 × 297 mm, Letter 8 1/2 × 11 in; a PDF point is 1/72 in (ISO 32000-1 §8.3.2.3).
  test.each([
    ["a4", "metric", 595.276, 841.89],
    ["letter", "inches", 612, 792],
  ] as const)("has one page a sheet at its true size, %s", async (paper, units, widthPt, heightPt) => {
    const pages = loadSheetPages(request, plan, { paper, units });
    const read = readPdf(await pagesToPdf(pages));
    expect(read.pages).toHaveLength(pages.length);
    for (const page of read.pages) {
      expect(page.widthPt).toBeCloseTo(widthPt, 1);
      expect(page.heightPt).toBeCloseTo(heightPt, 1);
    }
  });

  test("a millimetre of the page is a millimetre of paper", async () => {
    const marks = [textLine(10, 20, "near"), textLine(110, 270, "far")];
    const root = element("svg", { xmlns: "http://www.w3.org/2000/svg", viewBox: "0 0 210 297" }, ...marks);
    const page = { widthMm: 210, heightMm: 297, svg: svgText(root), title: "two words" };
    const [near, far] = readPdf(await pagesToPdf([page])).pages[0]?.lines ?? [];
    const mm = 72 / 25.4;
    expect(near).toMatchObject({ text: "near" });
    expect(near?.xPt).toBeCloseTo(10 * mm, 2);
    expect(near?.yPt).toBeCloseTo((297 - 20) * mm, 2);
    expect(far?.xPt).toBeCloseTo(110 * mm, 2);
    expect(far?.yPt).toBeCloseTo((297 - 270) * mm, 2);
  });

  test("brings its font along, relies on none, and is drawn, not painted", async () => {
    const read = readPdf(await pagesToPdf(loadSheetPages(request, plan, { paper: "a4", units: "metric" })));
    expect(read.embedded.length).toBeGreaterThanOrEqual(2);
    for (const name of read.embedded) expect(name).toContain("AtkinsonHyperlegible");
    expect(read.missing).toEqual([]);
    expect(read.images).toBe(0);
  });

  test("its text can be read back: names, numbers, both parts of the alphabet", async () => {
    const pages = loadSheetPages(request, plan, { paper: "a4", units: "metric" });
    const read = readPdf(await pagesToPdf(pages));
    const [first, , second] = read.pages.map(({ text }) => text);
    for (const name of ["shed <kiln> & co", "bowl “wide”", "Łódź żółty", "umbrella jar", "3 × 100 + 50 mm"]) {
      expect(first).toContain(name);
    }
    expect(second).toContain("the middle, 113 mm in");
    expect(read.pages.map(({ text }) => text).join("")).not.toContain("\uFFFD");
  });

  test.each([
    ["½ ¼ ¾ ° × — – ’ “ ” … µ ³ ±", "½ ¼ ¾ ° × — – ’ “ ” … µ ³ ±"],
    ["Łódź żółty, Őrség", "Łódź żółty, Őrség"],
    // Signs the font lacks are spelled out.
    ["≤ 50 °C ≥ 6 → 7", "<= 50 °C >= 6 -> 7"],
    ["⅜ ﬁne", "3⁄8 fine"],
    ["Ǎ ế", "A e"],
  ])("%s", async (typed, shown) => {
    const [page] = readPdf(await pagesToPdf([pageSaying(typed)])).pages;
    expect(page?.text.trim()).toBe(shown);
  });

  test("a script the font has no letters for leaves the page whole", async () => {
    expect(readPdf(await pagesToPdf([pageSaying("湯呑 🏺 чашка")])).pages).toHaveLength(1);
  });
});

describe("the sheet as one SVG file", () => {
  test("with the font inside is well-formed and needs nothing from elsewhere", () => {
    const pages = loadSheetPages(request, plan, { paper: "a4", units: "metric" });
    const svg = pagesToSvg(pages, fontFaceCss());
    const root = readSvg(svg);
    expect(root.children[0]?.name).toBe("style");
    expect(root.children[0]?.text).toContain("@font-face");
    expect(svg.replaceAll('xmlns="http://www.w3.org/2000/svg"', "")).not.toMatch(/https?:|href/);
  });
});

test("text is cut into runs by the font file that can draw it", () => {
  const coverage = { latin: (each: string) => each < "\u0100", "latin-ext": (each: string) => each === "ł" };
  expect(withFontRuns('<text x="1">a&amp;łb</text>', coverage)).toBe(
    '<text x="1">a&amp;<tspan font-family="latin-ext">ł</tspan>b</text>',
  );
});
