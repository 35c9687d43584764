import { afterAll, test } from "vitest";
import { postgresPlace, sqlitePlace } from "./testing/places.ts";
import { storeContract } from "./testing/store-contract.ts";
import { undoContract } from "./testing/undo-contract.ts";

const sqlite = sqlitePlace();
const postgres = await postgresPlace();
afterAll(async () => {
  await sqlite.end();
  if (typeof postgres !== "string") await postgres.end();
});

storeContract("SQLite", () => sqlite);
undoContract("SQLite", () => sqlite);
if (typeof postgres === "string") test.skip(`the studio's store on PostgreSQL: ${postgres}`, () => {});
else {
  storeContract("PostgreSQL", () => postgres);
  undoContract("PostgreSQL", () => postgres);
}
