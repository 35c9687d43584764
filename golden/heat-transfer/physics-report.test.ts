import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { PHYSICS_PROSE } from "../../benchmarks/physics-prose.ts";

const report = readFileSync(join(import.meta.dirname, "../../docs/physics.md"), "utf8");

test("the validation report's words are those it is written from", () => {
  for (const words of Object.values(PHYSICS_PROSE)) expect(report).toContain(words);
  // Nothing else but tables and the line on what is missed.
  let rest = report;
  for (const words of Object.values(PHYSICS_PROSE)) rest = rest.replace(words, "");
  const lines = rest.split("\n").filter((line) => line !== "" && !line.startsWith("|"));
  expect(lines).toHaveLength(1);
  expect(lines[0]).toMatch(/^(Every target is met\.|Missed: .+)$/);
});

test("a row of the report that misses its target is named at the top", () => {
  const missed = report.split("\n").filter((line) => line.includes("**missed**"));
  for (const row of missed) {
    const check = (row.split("|")[1] as string).trim();
    expect(report.split("\n| ")[0]).toContain(check);
  }
  expect(report.includes("Every target is met.")).toBe(missed.length === 0);
});
