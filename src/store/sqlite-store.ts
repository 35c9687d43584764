import { mkdirSync } from "node:fs";
import { dirname } from "node:path";
import { Kysely, sql } from "kysely";
import type { StudioStore } from "../studio/records/store.ts";
import type { Engine, Tables } from "./database.ts";
import { openStoreOver } from "./kysely-store.ts";
import { sqliteDialect } from "./sqlite-dialect.ts";

export const SQLITE: Engine = {
  name: "sqlite",
  types: { text: sql`text`, whole: sql`integer`, number: sql`real`, bytes: sql`blob` },
  tableEnd: sql`strict`,
  // Beginning the transaction took the lock already.
  takeTurn: async () => {},
};

/**
 * Opens the store in one SQLite file, making it, and its folder, where there is none. Other processes may have the same
 * file open. Beside the file stand `-wal` and `-shm` files while it is in use: never copy the file alone, write an
 * archive instead.
 *
 * @param file path of the file
 * @throws BadInput where the file is not a store, or one of a newer Wareboard
 */
export async function openSqliteStore(file: string): Promise<StudioStore> {
  mkdirSync(dirname(file), { recursive: true });
  return openStoreOver(new Kysely<Tables>({ dialect: sqliteDialect(file) }), SQLITE, file);
}
