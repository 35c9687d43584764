import { describe, expect, test } from "vitest";
import { overlap } from "./drawing/drawing.ts";
import { elevationDrawing } from "./drawing/elevation-drawing.ts";
import { levelDrawing } from "./drawing/level-drawing.ts";
import { loadSheetPages, type SheetOptions, type SheetPage } from "./load-sheet.ts";
import { PAPERS } from "./page/sheet-page.ts";
import { textWidthMm } from "./page/text-measure.ts";
import { pagesToSvg } from "./pages-to-svg.ts";
import { sheetLoad } from "./sheet-load.ts";
import { findAll, findTexts, readSvg } from "./testing/read-svg.ts";
import { crowdedLoad, handMadeLoad } from "./testing/sheet-cases.ts";

const METRIC: SheetOptions = { paper: "a4", units: "metric" };
const textsOf = (page: SheetPage): string[] => findTexts(readSvg(page.svg)).map(({ text }) => text);
const wordsOf = (pages: readonly SheetPage[]): string => pages.flatMap(textsOf).join(" ");
const { request, plan } = handMadeLoad();
const pages = loadSheetPages(request, plan, METRIC);
const page = (title: string, from: readonly SheetPage[] = pages): SheetPage => {
  const found = from.find((each) => each.title === title);
  if (!found) throw new Error(`no page "${title}" among ${from.map((each) => each.title).join(", ")}`);
  return found;
};

const CASES: [string, ReturnType<typeof handMadeLoad>][] = [
  ["a load set by hand", handMadeLoad()],
  ["63 small pieces", crowdedLoad(63, 60, 24)],
  ["250 beads", crowdedLoad(250, 27, 10)],
  ["an empty plan", { request, plan: { ...plan, levels: [], left: [] } }],
];

describe.each(CASES)("%s", (_, each) => {
  const options = (["a4", "letter"] as const).flatMap((paper) =>
    (["metric", "inches"] as const).map((units) => ({ paper, units })),
  );

  test.each(options)(
    "is well-formed, page by page and in one file, and keeps to its paper: $paper, $units",
    (option) => {
      const drawn = loadSheetPages(each.request, each.plan, option);
      const { widthMm, heightMm } = PAPERS[option.paper];
      for (const one of drawn) {
        const root = readSvg(one.svg);
        expect(root.attributes).toMatchObject({
          width: `${widthMm}mm`,
          height: `${heightMm}mm`,
          viewBox: `0 0 ${widthMm} ${heightMm}`,
        });
        for (const { text, x, y, element: mark } of findTexts(root)) {
          const bold = mark.attributes["font-weight"] === "bold" ? "bold" : "regular";
          const width = textWidthMm(text, (Number(mark.attributes["font-size"]) * 72) / 25.4, bold);
          const anchor = mark.attributes["text-anchor"] ?? "start";
          const left = anchor === "start" ? x : anchor === "end" ? x - width : x - width / 2;
          // 12 mm from every edge: what the commonest printers cannot reach is half of that.
          expect(left, text).toBeGreaterThan(12);
          expect(left + width, text).toBeLessThan(widthMm - 12);
          expect(y, text).toBeGreaterThan(12);
          expect(y, text).toBeLessThan(heightMm - 10);
        }
      }
      expect(readSvg(pagesToSvg(drawn)).children.filter(({ name }) => name === "svg")).toHaveLength(drawn.length);
    },
  );

  test("draws every piece and numbers, names and ticks it once in the lists", () => {
    const drawn = loadSheetPages(each.request, each.plan, METRIC);
    each.plan.levels.forEach((level, i) => {
      const own = drawn.filter(({ title }) => title === `Level ${i + 1}` || title === `Level ${i + 1}, continued`);
      const roots = own.map(({ svg }) => readSvg(svg));
      const marks = roots.flatMap((root) => findAll(root, ({ attributes }) => "data-piece" in attributes));
      const wanted = level.placements.map((_placement, n) => String(n + 1)).sort();
      expect(marks.map(({ attributes }) => attributes["data-piece"]).sort()).toEqual(wanted);
      // In the list a number is bold, in the accent colour, and ends against the names.
      const listed = roots
        .flatMap((root) => findTexts(root))
        .filter(({ element: mark }) => mark.attributes["text-anchor"] === "end" && mark.attributes.fill === "#8c3b24");
      expect(listed.map(({ text }) => text).sort()).toEqual(wanted);
      const boxes = roots.flatMap((root) =>
        findAll(root, ({ name, attributes }) => name === "rect" && attributes.width === "3.6"),
      );
      expect(boxes).toHaveLength(level.placements.length);
    });
  });

  test("no two labels of a drawing overlap, at any scale", () => {
    const load = sheetLoad(each.request, each.plan);
    for (const units of ["metric", "inches"] as const) {
      for (const scale of [1.5, 3, 4, 6]) {
        for (const level of load.levels) {
          const { labels, left, top, width, height } = levelDrawing(load, level, scale, units);
          labels.forEach((label, i) => {
            for (const other of labels.slice(i + 1))
              expect(overlap(label, other), `${label.text}, ${other.text}`).toBe(false);
            expect(label.x).toBeGreaterThanOrEqual(left - 1e-9);
            expect(label.x + label.width).toBeLessThanOrEqual(left + width + 1e-9);
            expect(label.y).toBeGreaterThanOrEqual(top - 1e-9);
            expect(label.y + label.height).toBeLessThanOrEqual(top + height + 1e-9);
          });
        }
        const { labels } = elevationDrawing(load, scale, units);
        labels.forEach((label, i) => {
          for (const other of labels.slice(i + 1))
            expect(overlap(label, other), `${label.text}, ${other.text}`).toBe(false);
        });
      }
    }
  });
});

describe("a level's drawing is true to its scale", () => {
  const root = readSvg(page("Level 1").svg);
  const scale = Number(
    findTexts(root)
      .map(({ text }) => /^1:([\d.]+)$/.exec(text)?.[1])
      .find(Boolean),
  );
  const circleOf = (number: number) => {
    const [piece] = findAll(root, ({ attributes }) => attributes["data-piece"] === String(number));
    const discs = piece?.children.filter(({ name }) => name === "circle") ?? [];
    const { cx, cy, r } = (discs[0] as (typeof discs)[0]).attributes;
    return { x: Number(cx) * scale, y: -Number(cy) * scale, radius: Number(r) * scale, count: discs.length };
  };

  test("each piece's circle has its own size and place", () => {
    // In carrying order: the far bowl first, then the mug at the right, then the one at the left front.
    const wanted = [plan.levels[0]?.placements[1], plan.levels[0]?.placements[2], plan.levels[0]?.placements[0]];
    wanted.forEach((placement, i) => {
      const { x, y, radius } = circleOf(i + 1);
      const diameter = request.ware.find(({ name }) => name === placement?.ware)?.diameterMm as number;
      // Written to a thousandth of a millimetre of paper.
      expect(Math.abs(x - (placement?.xMm as number))).toBeLessThan(scale * 0.001);
      expect(Math.abs(y - (placement?.yMm as number))).toBeLessThan(scale * 0.001);
      expect(Math.abs(radius - diameter / 2)).toBeLessThan(scale * 0.001);
    });
  });

  test("a piece with a profile shows its foot, one without does not", () => {
    expect(circleOf(1).count).toBe(2);
    expect(circleOf(2).count).toBe(1);
  });

  test("the scale bar's squares add up to 50 mm of paper and say so in the kiln's millimetres", () => {
    const squares = findAll(root, ({ name, attributes }) => name === "rect" && attributes.height === "1.4");
    expect(squares.reduce((sum, { attributes }) => sum + Number(attributes.width), 0)).toBeCloseTo(50, 6);
    expect(textsOf(page("Level 1"))).toContain(`${Math.round(50 * scale)} mm`);
  });

  test("the handle ends where the plan says", () => {
    // The mug at (−60, −90), handle turned to +y: a stadium whose far end is 86/2 + 34 = 77 mm from its axis.
    const [piece] = findAll(root, ({ attributes }) => attributes["data-piece"] === "3");
    const path = findAll(piece as NonNullable<typeof piece>, ({ name }) => name === "path")[0]?.attributes.d ?? "";
    const ys = [...path.matchAll(/(?:M|L|A [\d.]+ [\d.]+ 0 0 0) (-?[\d.]+) (-?[\d.]+)/g)].map(
      (each) => -Number(each[2]) * scale,
    );
    // The straight part ends half a width before the far end: at −90 + 77 − 9.
    expect(Math.max(...ys)).toBeCloseTo(-22, 1);
  });
});

describe("what the pages say", () => {
  test("distances and directions, worked by hand", () => {
    const words = textsOf(page("Level 1"));
    // Bowl: axis 90 mm out, radius 80, shelf 195: 25 mm inside, toward +y.
    expect(words).toContain("12 o’clock, 25 mm in");
    // Mug at (100, −30), handle to −x: its rim ends at √10900 + 43 = 147.4 mm, 47.6 short of the edge; 3:30 (−16.7°).
    expect(words).toContain("3:30, 48 mm in");
    expect(words).toContain("handle to 9 o’clock · oatmeal, cone 6");
    // Jug in the middle, handle 77 mm… 48 + 34 = 82 from the axis: 113 mm inside, handle at 30° = 2 o'clock, spout opposite.
    const above = textsOf(page("Level 2"));
    expect(above).toContain("the middle, 113 mm in");
    expect(above.join(" ")).toContain("handle to 2 o’clock · spout to 8 o’clock · on a cookie, 104 mm across");
  });

  test("a piece over the edge is said to be, and broken rules stand on the first page", () => {
    const [first, ...others] = plan.levels;
    const out = { ware: "mug", xMm: 170, yMm: 0, turnDeg: 180 };
    const moved = { ...plan, levels: [{ ...(first as NonNullable<typeof first>), placements: [out] }, ...others] };
    const broken = [{ message: "mug (level 1, piece 1) passes the edge of its shelf by 18 mm; no part of it may." }];
    const drawn = loadSheetPages(request, moved, { ...METRIC, broken });
    expect(textsOf(page("Level 1", drawn))).toContain("3 o’clock, 18 mm over the edge");
    expect(textsOf(drawn[0] as SheetPage).join(" ")).toContain("breaks one rule mug (level 1, piece 1) passes");
    expect(wordsOf(pages)).not.toContain("breaks");
  });

  test("counts to lay out, what stays out and why", () => {
    const words = textsOf(pages[0] as SheetPage).join(" ");
    expect(words).toContain("7 of 8 pieces");
    expect(words).toMatch(/2 full shelf 3 posts of 25 mm 3 posts of 50 mm 3 posts of 100 mm/);
    expect(words).toContain("3 level 1, 2 mug");
    expect(words).toContain("1 × umbrella jar too tall by 46 mm with the lid clearance");
  });

  test("the loading order: posts, shelf past the probe, cookies before ware, cones at their spyhole", () => {
    const words = textsOf(page("Loading order")).join(" ");
    const order = [
      "Stand three posts of 25 mm on the floor, at 2:30, 6:30 and 10:30",
      "Level 1, full shelf",
      // Round shelf in an octagon: at 60° the wall is 215/cos 15° = 222.6 out, the tip 25 less, 2.6 from the shelf's edge.
      "Lower the full shelf, level, held 5 mm toward 7 o’clock to pass the thermocouple at 1 o’clock.",
      "41 mm above the floor",
      "Stand three posts of 100 mm with 50 mm on top on it, straight above the posts beneath.",
      "in sight of the lower spyhole, at 4 o’clock",
      "Set down pieces 1 to 3, in the order of their numbers: the far side first.",
      "Level 2, full shelf",
      "Lower the full shelf, level, straight down.",
      "Set the cookies down first, for piece",
      "in sight of the upper spyhole",
      "Set down pieces 1 to 4",
      "Count: 7 pieces in.",
      "Plug the lower spyhole.",
    ];
    let at = -1;
    for (const step of order) {
      const next = words.indexOf(step, at + 1);
      expect(next, `"${step}" in its turn in: ${words}`).toBeGreaterThan(at);
      at = next;
    }
  });

  test("cautions defer to the manual, the codes and the electrician, and name their sources", () => {
    const words = textsOf(page("Cautions")).join(" ");
    expect(words).toContain("own manual and nameplate, your local codes and a licensed electrician come first");
    for (const source of ["NFPA 70", "29 CFR 1910.1053", "84/500/EEC", "from memory", "common practice, no source"]) {
      expect(words).toContain(source);
    }
  });

  test("in inches nothing is told in millimetres", () => {
    const drawn = loadSheetPages(request, plan, { paper: "letter", units: "inches" });
    expect(wordsOf(drawn)).not.toMatch(/\d (mm|cm)\b/);
    expect(wordsOf(drawn)).toContain("too tall by 1 13/16 in with the lid clearance");
    expect(wordsOf(drawn)).toContain("12 o’clock, 1 in inside");
  });

  test("names come through as typed", () => {
    expect(textsOf(pages[0] as SheetPage)).toContain("shed <kiln> & co");
    expect(wordsOf(pages)).toContain("Łódź żółty");
  });

  test("firing pages stand before the cautions and are counted", () => {
    const firing = [{ title: "The firing", above: "", marks: [] }];
    const drawn = loadSheetPages(request, plan, { ...METRIC, firing, title: "June load" });
    const titles = ["June load", "Level 1", "Level 2", "Loading order", "The firing", "Cautions"];
    expect(drawn.map(({ title }) => title)).toEqual(titles);
    expect(textsOf(drawn.at(-1) as SheetPage)).toContain("6 of 6");
  });

  test("the same load gives the same pages", () => {
    expect(loadSheetPages(request, plan, METRIC)).toEqual(pages);
  });
});
