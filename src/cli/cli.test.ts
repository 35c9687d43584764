import { mkdirSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { beforeAll, describe, expect, test } from "vitest";
import { publishedSchemas } from "./published-schemas.ts";
import { runCommand } from "./testing/run-command.ts";

const EXAMPLE = new URL("../../examples/first-load/request.json", import.meta.url);
const folder = mkdtempSync(join(tmpdir(), "wareboard-cli-"));
const request = join(folder, "request.json");
const plan = join(folder, "plan.json");

beforeAll(() => {
  writeFileSync(request, readFileSync(EXAMPLE));
  const planned = runCommand(["plan", request, "--out", plan, "--seconds", "1", "--json"]);
  expect(planned.err).toBe("");
  expect(planned.code).toBe(0);
});

/** Writes the example changed in one place and gives its path. */
function changed(name: string, change: (text: string) => string): string {
  const path = join(folder, name);
  writeFileSync(path, change(readFileSync(EXAMPLE, "utf8")));
  return path;
}

describe("plan, check and sheet", () => {
  test("a plan the planner makes keeps every rule", () => {
    const checked = runCommand(["check", request, plan, "--json"]);
    expect(JSON.parse(checked.out)).toEqual({ fits: true, broken: [] });
    expect(checked.code).toBe(0);
  });

  test("a plan with a piece pushed into another is refused with exit code 1, the pieces and the distance", () => {
    const moved = JSON.parse(readFileSync(plan, "utf8"));
    const level = moved.levels.find((each: { placements: unknown[] }) => each.placements.length > 1);
    level.placements[0].xMm = level.placements[1].xMm + 20;
    level.placements[0].yMm = level.placements[1].yMm;
    const path = join(folder, "moved.json");
    writeFileSync(path, JSON.stringify(moved));
    const checked = runCommand(["check", request, path, "--json"]);
    expect(checked.code).toBe(1);
    const { broken } = JSON.parse(checked.out);
    expect(broken.map((each: { rule: string }) => each.rule)).toContain("gapMm");
    expect(broken[0].things.length).toBeGreaterThan(0);
  });

  test("the sheet is a PDF or an SVG, whole", () => {
    for (const [file, start] of [
      ["sheet.pdf", "%PDF-"],
      ["sheet.svg", "<"],
    ] as const) {
      const out = join(folder, file);
      expect(runCommand(["sheet", request, plan, "--out", out, "--paper", "letter", "--units", "inches"]).code).toBe(0);
      expect(readFileSync(out, "latin1").startsWith(start)).toBe(true);
    }
    expect(readdirSync(folder).filter((name) => name.includes(".part-"))).toEqual([]);
  });

  test("a piece that must fire and cannot answers no, and says why", () => {
    const tall = changed("tall.json", (text) => text.replace('"value": 12', '"mustFire": true, "value": 12'));
    const planned = runCommand(["plan", tall, "--seconds", "0.3", "--json"]);
    expect(planned.code).toBe(1);
    const { left } = JSON.parse(planned.out);
    expect(left.find((each: { ware: string }) => each.ware === "umbrella jar").reason).toMatch(/too tall by/);
  });

  test("nothing that could ever fit answers no with the reason, not an empty plan", () => {
    const none = changed("none.json", (text) => text.replaceAll('"acrossFlatsMm": 430', '"acrossFlatsMm": 300'));
    const planned = runCommand(["plan", none, "--json"]);
    expect(planned.code).toBe(1);
    expect(JSON.parse(planned.out).impossible[0].message).toMatch(/shelf/i);
  });
});

describe("bad input ends in one clear sentence and exit code 2", () => {
  const cases: readonly (readonly [string, (text: string) => string, RegExp])[] = [
    ["truncated.json", (text) => text.slice(0, text.length / 2), /cut off on line \d+/],
    ["empty.json", () => "", /empty file/],
    ["not-a-number.json", (text) => text.replace('"heightMm": 65', '"heightMm": NaN'), /NaN on line \d+/],
    ["negative.json", (text) => text.replace('"heightMm": 65', '"heightMm": -65'), /ware\[0\]\.heightMm: found -65/],
    [
      "unit.json",
      (text) => text.replace('"diameterMm": 70', '"diameterIn": 2.75'),
      /ware\[0\]\.diameterIn.*diameterMm/,
    ],
    ["words.json", (text) => text.replace('"diameterMm": 70', '"diameterMm": "2 3/4 in"'), /2 3\/4 in is 69\.8/],
    ["crowd.json", (text) => text.replace('"mug", "count": 6', '"mug", "count": 10000'), /found 100\d\d pieces/],
    ["unknown.json", (text) => text.replace('"format"', '"colour": "blue", "format"'), /colour: found a field/],
    ["format.json", (text) => text.replace("load-request/1", "load-request/9"), /format: found "load-request\/9"/],
  ];
  test.each(cases)("%s", (name, change, sentence) => {
    const path = changed(name, change);
    const asPerson = runCommand(["plan", path]);
    expect(asPerson.code).toBe(2);
    expect(asPerson.err.trim().split("\n")).toHaveLength(1);
    expect(asPerson.err).toMatch(sentence);
    expect(asPerson.err).toContain(name);
    const asMachine = runCommand(["plan", path, "--json"]);
    expect(asMachine.code).toBe(2);
    const { error } = JSON.parse(asMachine.err);
    expect(Object.keys(error)).toEqual(expect.arrayContaining(["code", "path", "found", "expected", "message"]));
  });

  test.each([
    [["plan"], /no file/],
    [["plan", "nowhere.json"], /no such file/],
    [["plan", "a.json", "--sedonds", "3"], /--sedonds/],
    [["plan", EXAMPLE.pathname, "--seconds", "soon"], /--seconds: found "soon"/],
    [["plan", EXAMPLE.pathname, "--seed", "-3"], /--seed: found "-3"/],
    [["bake"], /found "bake"/],
    [["sheet", "a.json", "b.json", "--out", "c.doc"], /\.pdf or \.svg/],
  ])("%j", (args, sentence) => {
    const done = runCommand(args);
    expect(done.code).toBe(2);
    expect(done.err).toMatch(sentence);
  });

  test("a place that cannot be written is said so, and nothing is left beside it", () => {
    const taken = join(folder, "taken");
    mkdirSync(taken);
    const drawn = runCommand(["sheet", request, plan, "--out", join(folder, "request.json", "sheet.pdf")]);
    expect(drawn.code).toBe(2);
    const planned = runCommand(["plan", request, "--seconds", "0.1", "--out", taken]);
    expect(planned.code).toBe(2);
    expect(planned.err).toMatch(/cannot be written/);
    expect(readdirSync(folder).filter((name) => name.includes(".part-"))).toEqual([]);
  });

  test("a plan given where a request belongs is told by its format", () => {
    expect(runCommand(["check", plan, plan]).err).toMatch(/format: found "load-plan\/1"; expected "load-request\/1"/);
  });

  test("a plan that names a piece nobody has is refused by name", () => {
    const path = join(folder, "stranger.json");
    writeFileSync(path, readFileSync(plan, "utf8").replaceAll("espresso cup", "unknown thing"));
    const checked = runCommand(["check", request, path]);
    expect(checked.code).toBe(2);
    expect(checked.err).toMatch(/found "unknown thing"; expected a piece of the request/);
  });
});

describe("help and schemas", () => {
  test("help lists every command, and each command's help has examples", () => {
    const overall = runCommand(["--help"]);
    expect(overall.code).toBe(0);
    for (const name of ["plan", "check", "sheet", "demo"]) {
      expect(overall.out).toContain(name);
      expect(runCommand([name, "--help"]).out).toMatch(/Examples\n {2}wareboard/);
    }
  });

  test("the published schemas are the code's own", () => {
    for (const [name, schema] of Object.entries(publishedSchemas())) {
      const published = readFileSync(new URL(`../../docs/schemas/${name}`, import.meta.url), "utf8");
      expect(JSON.parse(published), `docs/schemas/${name} is stale: run npm run schemas`).toEqual(schema);
    }
  });
});
