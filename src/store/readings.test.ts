import { afterAll, test } from "vitest";
import { postgresPlace, sqlitePlace } from "./testing/places.ts";
import { readingContract } from "./testing/reading-contract.ts";

const sqlite = sqlitePlace();
const postgres = await postgresPlace();
afterAll(async () => {
  await sqlite.end();
  if (typeof postgres !== "string") await postgres.end();
});

readingContract("SQLite", () => sqlite);
if (typeof postgres === "string") test.skip(`readings on PostgreSQL: ${postgres}`, () => {});
else readingContract("PostgreSQL", () => postgres);
