import { describe, expect, test } from "vitest";
import { CAUTIONS, CAUTIONS_FIRST } from "../cautions.ts";
import { PAPERS } from "../page/sheet-page.ts";
import { textWidthMm } from "../page/text-measure.ts";
import { pagesToSvg } from "../pages-to-svg.ts";
import { findTexts, readSvg } from "../testing/read-svg.ts";
import { type FiringSheet, firingSheetPages } from "./firing-pages.ts";
import { handMadeFiring } from "./testing/firing-case.ts";

const firing = handMadeFiring();
const METRIC = { paper: "a4", units: "C" } as const;
const long = "A sentence that goes on for long, with figures 12 and 1222 °C in it, and no end in sight. "
  .repeat(4)
  .trim();
const crowded: FiringSheet = {
  ...firing,
  keyIn: Array.from({ length: 30 }, (_, i) => ({ ...firing.keyIn[0], segment: i + 1, reason: long }) as never),
  levels: Array.from({ length: 12 }, (_, level) => ({ level, peakC: 1200, cone: "cone 5 down", offsetC: level - 6 })),
  advice: Array.from({ length: 8 }, () => long),
  notes: Array.from({ length: 10 }, () => long),
};

/** All words of the pages in order, as they are read: lines joined by spaces. */
const wordsOf = (sheet: FiringSheet, options: Parameters<typeof firingSheetPages>[1] = METRIC): string =>
  firingSheetPages(sheet, options)
    .flatMap((page) => findTexts(readSvg(page.svg)).map(({ text }) => text))
    .join(" ")
    .replaceAll(/\s+/g, " ");

describe.each([
  ["set by hand", firing],
  ["of many segments and levels", crowded],
])("a firing %s", (_, sheet) => {
  test.each((["a4", "letter"] as const).flatMap((paper) => (["C", "F"] as const).map((units) => ({ paper, units }))))(
    "is well-formed and keeps to its paper: $paper, °$units",
    (options) => {
      const pages = firingSheetPages(sheet, options);
      const { widthMm, heightMm } = PAPERS[options.paper];
      for (const page of pages) {
        const root = readSvg(page.svg);
        expect(root.attributes).toMatchObject({ width: `${widthMm}mm`, height: `${heightMm}mm` });
        for (const { text, x, y, element } of findTexts(root)) {
          const weight = element.attributes["font-weight"] === "bold" ? "bold" : "regular";
          const width = textWidthMm(text, (Number(element.attributes["font-size"]) * 72) / 25.4, weight);
          const anchor = element.attributes["text-anchor"] ?? "start";
          const left = anchor === "start" ? x : anchor === "end" ? x - width : x - width / 2;
          // 12 mm from every edge, as the load's own pages keep.
          expect(left, text).toBeGreaterThan(12);
          expect(left + width, text).toBeLessThan(widthMm - 12);
          expect(y, text).toBeGreaterThan(12);
          expect(y, text).toBeLessThan(heightMm - 10);
        }
      }
      expect(readSvg(pagesToSvg(pages)).children.filter(({ name }) => name === "svg")).toHaveLength(pages.length);
    },
  );
});

test("has a row to key in for every segment, its rate, target, hold and why", () => {
  const words = wordsOf(firing);
  expect(words).toMatch(
    /Key in rate to hold why 1 80 °C\/h 120 °C 20 min drying 2 full power 1100 °C none As fast as the kiln <can>\./,
  );
  expect(words).toMatch(/3 60 °C\/h 1215 °C 10 min The rate cones are made for\./);
});

test("says what to expect: hours, energy and cost, every level from the top down, cooling, looks", () => {
  const words = wordsOf(firing);
  expect(words).toMatch(
    /Shuts off 8 h 20 min after the start, near 1215 °C\. Uses about 31\.2 kWh: 8\.12 EUR by its tariff\./,
  );
  expect(words).toMatch(
    /Level 2: no cone down, peak 1219 °C; as much heat work as at the probe\. Level 1: cone 5 down, 60 % of the way to cone 6, peak 1204 °C; as if 11 °C cooler than at the probe\./,
  );
  expect(words).toMatch(/Under 200 °C 15 h 30 min after the start\. Plugs may come out/);
  expect(words).toMatch(/Under 50 °C later than was reckoned\./);
  expect(words).toMatch(/8 h 20 min: see that it has shut off/);
  expect(words).toMatch(/witness cones have the last word/);
});

test("carries every trouble, piece of advice and note", () => {
  const words = wordsOf(firing);
  for (const sentence of [...firing.troubles, ...firing.advice, ...firing.notes]) expect(words).toContain(sentence);
});

test("nothing of a crowded firing is lost between its pages", () => {
  const words = wordsOf(crowded);
  for (const { segment } of crowded.keyIn) expect(words).toContain(` ${segment} 80 °C/h`);
  for (const { level } of crowded.levels) expect(words).toContain(`Level ${level + 1}: cone 5 down`);
  expect(words.split("and no end in sight.").length - 1).toBeGreaterThanOrEqual(4 * (30 + 8 + 10));
});

test("ends with the cautions, each with its source, the kiln's own manual first", () => {
  for (const [units, lengths] of [
    ["C", "metric"],
    ["F", "inches"],
  ] as const) {
    const words = wordsOf(firing, { paper: "a4", units });
    expect(words).toContain(CAUTIONS_FIRST);
    for (const caution of CAUTIONS) {
      expect(words).toContain(caution.title);
      expect(words).toContain(caution.text(lengths));
      expect(words).toContain(caution.source);
    }
  }
  // The safety table's own facts: NEC's 125 %, shade 1.7 to 3, the steps of opening.
  expect(wordsOf(firing)).toMatch(
    /125 %.*shade 1\.7 to 3.*200 °C \(392 °F\), crack the lid at 120 °C.*unload at 50 °C/,
  );
});

test("in °F every temperature of the tables is in °F", () => {
  const words = wordsOf(firing, { paper: "letter", units: "F" });
  // 1215 °C is 2219 °F, 1204 is 2199, 11 °C apart are 20 °F. The rows to key in are given in °F already.
  expect(words).toMatch(/near 2219 °F/);
  expect(words).toMatch(/peak 2199 °F; as if 20 °F cooler than at the probe/);
  expect(words).toMatch(/80 °F\/h/);
});

test("without troubles, advice or notes their headings are left out", () => {
  const words = wordsOf({ ...firing, troubles: [], advice: [], notes: [], cost: null });
  expect(words).not.toMatch(/cannot follow|Tried in this kiln|Taken for granted/);
  expect(words).toMatch(/Uses about 31\.2 kWh\./);
});
