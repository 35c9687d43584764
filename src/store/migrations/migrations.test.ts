import { readFileSync } from "node:fs";
import { DatabaseSync } from "node:sqlite";
import { afterAll, describe, expect, test } from "vitest";
import { KINDS } from "../../studio/records/all-kinds.ts";
import { columnsOf } from "../columns.ts";
import { compiledMigrations, ENGINES, historyText, schemaText } from "../testing/compiled-migrations.ts";
import { sqlitePlace } from "../testing/places.ts";
import { MIGRATIONS } from "./all-migrations.ts";
import { tableOf } from "./migration.ts";

const kept = (name: string): string => readFileSync(new URL(name, import.meta.url), "utf8");
const ADDS = /^create (table|(unique )?index) |^alter table "\w+" add column /;
const place = sqlitePlace();
afterAll(() => place.end());

describe("migrations", () => {
  test("are as they were let out; new ones stand after them (node src/store/testing/write-history.ts)", () => {
    expect(historyText()).toBe(kept("history.txt"));
  });

  test.each(ENGINES)("make the schema that is written down: $name", (engine) => {
    expect(schemaText(engine)).toBe(kept(`schema.${engine.name}.sql`));
  });

  test.each(ENGINES)("only add: $name", (engine) => {
    const statements = [...compiledMigrations(engine).values()].flat();
    expect(statements.length).toBeGreaterThan(0);
    for (const statement of statements) expect(statement).toMatch(ADDS);
  });

  test("have names that sort in their order, each its own", () => {
    const names = MIGRATIONS.map(({ name }) => name);
    expect(names).toEqual([...new Set(names)].sort());
  });

  test("leave a column for every field of every record, of its kind", async () => {
    const store = await place.openEmpty();
    const database = new DatabaseSync(store.place);
    const types = { text: "TEXT", json: "TEXT", whole: "INTEGER", flag: "INTEGER", number: "REAL" };
    for (const kind of Object.values(KINDS)) {
      const there = database.prepare(`select name, type, "notnull" from pragma_table_info(?)`).all(kind.name);
      const wanted = columnsOf(kind.schema).map(({ name, holds, orNull }) => ({
        name,
        type: types[holds],
        notnull: orNull ? 0 : 1,
      }));
      expect(
        there.map((column) => ({ ...column, type: String(column.type).toUpperCase() })),
        kind.name,
      ).toEqual(expect.arrayContaining(wanted));
      expect(there, kind.name).toHaveLength(wanted.length);
    }
    database.close();
    await store.close();
  });

  test("happen all or none: one that fails half-way leaves no table behind, and the next opening starts afresh", async () => {
    const store = await place.openEmpty();
    await store.close();
    const before = new DatabaseSync(store.place).prepare("select name from sqlite_master order by name").all();
    const broken = {
      name: "9000-broken",
      steps: (...[schema, engine]: Parameters<(typeof MIGRATIONS)[number]["steps"]>) => [
        tableOf(schema, engine, "halfWay", { id: "text" }),
        schema.createIndex("nowhere").on("noSuchTable").column("id"),
      ],
    };
    (MIGRATIONS as unknown[]).push(broken);
    await expect(place.reopen(store)).rejects.toThrow(/noSuchTable/);
    (MIGRATIONS as unknown[]).pop();
    const after = new DatabaseSync(store.place).prepare("select name from sqlite_master order by name").all();
    expect(after).toEqual(before);
    await (await place.reopen(store)).close();
  });
});
