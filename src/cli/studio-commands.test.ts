import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import ICAL from "ical.js";
import { afterAll, beforeAll, expect, test } from "vitest";
import { storeFile } from "../server/running/data-folder.ts";
import { openSqliteStore } from "../store/sqlite-store.ts";
import { beginWithDemo } from "../studio/demo/begin.ts";
import { runCommand } from "./testing/run-command.ts";

const folder = mkdtempSync(join(tmpdir(), "wareboard-do-"));
const studio = join(folder, "studio");
const ask = (...words: string[]) => {
  const done = runCommand([...words, "--data", studio, "--json"]);
  return { code: done.code, said: JSON.parse(done.code === 0 ? done.out : done.err) };
};
const give = (name: string, input: unknown) => {
  writeFileSync(join(folder, "input.json"), JSON.stringify(input));
  return ask("do", name, join(folder, "input.json"));
};

beforeAll(async () => {
  mkdirSync(studio, { recursive: true });
  const store = await openSqliteStore(storeFile(studio));
  let ids = 0;
  await beginWithDemo(store, "2026-11-25T12:00:00.000Z", () => `d${ids++}`);
  await store.close();
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

test("what the screens can do is done from the terminal, and taken back", () => {
  const note = { id: "n1", aboutKind: null, aboutId: null, text: "The lid sticks." };
  expect(give("add-note", note).said.changed.notes.n1.text).toBe("The lid sticks.");
  expect(ask("do", "--undo", "notes").said.entry.undone).toBe(true);
  expect(give("add-note", { ...note, text: "" })).toMatchObject({ code: 2, said: { error: { path: "text" } } });
  expect(give("switch-on", {})).toMatchObject({ code: 2, said: { error: { code: "unknown-command" } } });
});

test("every command is listed with what it takes, and none of them switches a kiln", () => {
  const names = (ask("do").said.commands as { name: string; schema: object }[]).map(({ name }) => name);
  expect(names).toContain("prepare-firing");
  expect(names.filter((name) => /switch/.test(name))).toEqual([]);
});

test("a prepared firing goes into a calendar that another program reads (ical.js)", () => {
  const firings = ask("firings").said.firings as { id: string; state: string }[];
  const planned = firings.find(({ state }) => state === "planned");
  const out = join(folder, "firing.ics");
  expect(ask("calendar", planned?.id ?? "none", "--out", out).code).toBe(0);
  const events = new ICAL.Component(ICAL.parse(readFileSync(out, "utf8"))).getAllSubcomponents("vevent");
  expect(events.length).toBeGreaterThan(1);
  expect(ask("calendar", "no such", "--out", out)).toMatchObject({ code: 2, said: { error: { path: "FIRING" } } });
});

test("the faults that were found are told with what may have caused them, and where that is from", () => {
  const firings = ask("firings").said.firings as { id: string }[];
  const pieces = firings.slice(-4).flatMap(({ id }) => ask("causes", id).said.pieces) as {
    fault: string;
    causes: { because: string; source: string }[];
  }[];
  expect(pieces.length).toBeGreaterThan(0);
  for (const { fault, causes } of pieces) {
    expect(causes.length, fault).toBeGreaterThan(0);
    expect(causes.every(({ because, source }) => because.length > 10 && source.length > 3)).toBe(true);
  }
});

test("months add up to what their firings cost", () => {
  const months = ask("costs").said.months as { total: number; firings: number }[];
  const all = ask("firings").said.firings as { cost: number | null; startedAt: string | null }[];
  // One that has not started yet costs what is foretold of it, and belongs to no month.
  const listed = all.filter(({ startedAt }) => startedAt !== null);
  const sum = (numbers: readonly number[]): number => numbers.reduce((all, each) => all + each, 0);
  expect(sum(months.map(({ total }) => total))).toBeCloseTo(sum(listed.map(({ cost }) => cost ?? 0)), 6);
  expect(sum(months.map(({ firings }) => firings))).toBe(listed.length);
});

test("each kiln's parts are told with the firings they have served", () => {
  const kilns = ask("upkeep").said.kilns as { kiln: string; due: { elements: { firings: number } } }[];
  expect(kilns.length).toBeGreaterThan(0);
  expect(kilns.some(({ due }) => due.elements.firings > 0)).toBe(true);
  expect(runCommand(["upkeep", "--data", studio]).out).toMatch(/isolator/);
});
