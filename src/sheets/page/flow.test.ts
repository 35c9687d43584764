import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { element, group, svgText } from "../svg-writer.ts";
import { findAll, readSvg } from "../testing/read-svg.ts";
import { type Block, flow, flowLevel, space } from "./flow.ts";
import type { Frame } from "./sheet-page.ts";

const block = (id: number, heightMm: number, withNext = false): Block => ({
  heightMm,
  withNext,
  marks: [element("rect", { "data-id": id, "data-height": heightMm })],
});
const first: Frame[] = [
  { x: 0, y: 100, width: 50, height: 30 },
  { x: 60, y: 100, width: 50, height: 30 },
];
const later: Frame[] = [
  { x: 0, y: 10, width: 50, height: 120 },
  { x: 60, y: 10, width: 50, height: 120 },
];

/** Where each block was set: page, column and height, read back from the SVG. */
function places(pages: ReturnType<typeof flow>) {
  return pages.flatMap((marks, page) =>
    findAll(readSvg(svgText(group(marks))), (each) => each.attributes.transform !== undefined).flatMap((each) => {
      const [, x, y] = /translate\((\S+) (\S+)\)/.exec(each.attributes.transform as string) ?? [];
      return each.children.map((child) => ({
        page,
        x: Number(x),
        y: Number(y),
        id: Number(child.attributes["data-id"]),
        height: Number(child.attributes["data-height"]),
      }));
    }),
  );
}

describe("setting blocks through columns and pages", () => {
  const blocks = fc
    .array(fc.tuple(fc.integer({ min: 1, max: 40 }), fc.boolean(), fc.boolean()), { maxLength: 40 })
    .map((list) => list.map(([height, stays, blank], id) => (blank ? space(height) : block(id, height, stays))));

  test.each([
    ["full columns", flow],
    ["level columns", flowLevel],
  ])("every block is set once, in order, inside its column: %s", (_, set) => {
    fc.assert(
      fc.property(blocks, (list) => {
        const got = places(set(list, first, later));
        expect(got.map(({ id }) => id)).toEqual(list.flatMap((each, id) => (each.marks.length > 0 ? [id] : [])));
        for (const { page, x, y, height } of got) {
          const frame = (page === 0 ? first : later).find((each) => each.x === x) as Frame;
          expect(y).toBeGreaterThanOrEqual(frame.y);
          expect(y + height).toBeLessThanOrEqual(frame.y + frame.height + 0.01);
        }
      }),
    );
  });

  test("a heading never ends a column", () => {
    const got = places(flow([block(0, 25), block(1, 4, true), block(2, 10)], first, later));
    expect(got.map(({ x }) => x)).toEqual([0, 60, 60]);
  });

  test("empty space alone makes no new page", () => {
    expect(flow([block(0, 30), block(1, 30), space(5)], first, later)).toHaveLength(1);
  });

  test("a block taller than any column is still set, and ends", () => {
    expect(places(flow([block(0, 500), block(1, 10)], first, later)).map(({ id }) => id)).toEqual([0, 1]);
  });

  test("columns end level where everything fits one page", () => {
    const got = places(flowLevel([block(0, 10), block(1, 10), block(2, 10)], first, later));
    expect(got.filter(({ x }) => x === 0)).toHaveLength(2);
    expect(got.filter(({ x }) => x === 60)).toHaveLength(1);
  });
});
