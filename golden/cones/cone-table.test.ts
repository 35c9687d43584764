import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { CONES, ladderOf } from "../../src/firing/cones/cone.ts";
import { CONE_SOURCES, CONE_TABLE } from "../../src/firing/cones/cone-table.ts";

interface PublishedRow {
  readonly cone: string;
  readonly ssb: { readonly r15: number | null; readonly r60: number; readonly r150: number };
  readonly source_r15: string;
  readonly source_r60_r150: string;
}
const published = JSON.parse(readFileSync(join(import.meta.dirname, "cone-tables.json"), "utf8")) as {
  rows: PublishedRow[];
};

test("the table in the program is the published self-supporting one, value and source", () => {
  const ours = CONE_TABLE.map((row) => ({
    cone: row.cone,
    ssb: { r15: row.at15C, r60: row.at60C, r150: row.at150C },
    source_r15: CONE_SOURCES[row.sourceOf15],
    source_r60_r150: CONE_SOURCES[row.sourceOf60And150],
  }));
  const theirs = published.rows.map(({ cone, ssb, source_r15, source_r60_r150 }) => ({
    cone,
    ssb,
    source_r15,
    source_r60_r150,
  }));
  expect(ours).toEqual(theirs);
});

test("every cone ends hotter than the one before it, and hotter when heated faster", () => {
  expect(CONE_TABLE.map((row) => row.cone)).toEqual(CONES);
  CONE_TABLE.forEach((row, place) => {
    expect(row.at60C).toBeLessThan(row.at150C);
    if (row.at15C !== null) expect(row.at15C).toBeLessThan(row.at60C);
    const cooler = CONE_TABLE[place - 1];
    if (!cooler) return;
    expect(row.at60C).toBeGreaterThan(cooler.at60C);
    expect(row.at150C).toBeGreaterThan(cooler.at150C);
    if (row.at15C !== null && cooler.at15C !== null) expect(row.at15C).toBeGreaterThan(cooler.at15C);
  });
});

test("the ladder numbers cones as the published formats say", () => {
  const known: [string, number][] = [
    ["022", 0],
    ["021", 1],
    ["01", 21],
    ["1", 22],
    ["6", 27],
    ["14", 35],
    ["05.5", 16.5],
    ["5.5", 26.5],
  ];
  for (const [cone, ladder] of known) expect(ladderOf(cone as (typeof CONES)[number])).toBe(ladder);
  const rungs = CONES.map(ladderOf);
  expect(rungs).toEqual([...rungs].sort((a, b) => a - b));
});
