import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { beforeAll, describe, expect, test } from "vitest";
import { runCommand } from "./testing/run-command.ts";

const REQUEST = new URL("../../examples/first-load/request.json", import.meta.url).pathname;
const folder = mkdtempSync(join(tmpdir(), "wareboard-around-"));
const thin = join(folder, "thin.json");

type Level = { placements: { ware: string }[] };
const piecesOf = (levels: Level[]): number => levels.reduce((sum, level) => sum + level.placements.length, 0);

beforeAll(() => {
  const planned = runCommand(["plan", REQUEST, "--seconds", "0.5", "--json"]);
  expect(planned.err).toBe("");
  const plan = JSON.parse(planned.out);
  for (const level of plan.levels) level.placements = level.placements.filter((_: unknown, i: number) => i % 2 === 0);
  writeFileSync(thin, JSON.stringify(plan));
});

describe("plan --around", () => {
  test("leaves all that stands there where it is, and packs more beside it", () => {
    const out = join(folder, "fuller.json");
    const done = runCommand(["plan", REQUEST, "--around", thin, "--seconds", "0.5", "--out", out]);
    expect(done.err).toBe("");
    const before = JSON.parse(readFileSync(thin, "utf8")).levels;
    const after = JSON.parse(readFileSync(out, "utf8")).levels;
    before.forEach((level: Level, i: number) => {
      expect(after[i]).toMatchObject({ ...level, placements: expect.anything() });
      expect(after[i].placements.slice(0, level.placements.length)).toEqual(level.placements);
    });
    expect(piecesOf(after)).toBeGreaterThan(piecesOf(before));
    expect(JSON.parse(runCommand(["check", REQUEST, out, "--json"]).out)).toEqual({ fits: true, broken: [] });
  });

  test("refuses a plan in which more stands than the request has, naming the piece", () => {
    const plan = JSON.parse(readFileSync(thin, "utf8"));
    const [first] = plan.levels[0].placements;
    plan.levels[0].placements.push(...Array.from({ length: 100 }, () => first));
    const crowded = join(folder, "crowded.json");
    writeFileSync(crowded, JSON.stringify(plan));
    const done = runCommand(["plan", REQUEST, "--around", crowded, "--json"]);
    expect(done.code).toBe(2);
    const { error } = JSON.parse(done.err);
    expect(error).toMatchObject({ code: "too-many-kept", path: expect.stringMatching(/^around\.plan\.levels\[0\]/) });
    expect(error.found).toContain(first.ware);
  });

  test("is told of in the help", () => {
    expect(runCommand(["plan", "--help"]).out).toMatch(/--around .*stays where it is/);
  });
});
