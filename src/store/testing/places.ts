import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { DatabaseSync } from "node:sqlite";
import pg from "pg";
import { openPostgresStore } from "../postgres-store.ts";
import { openSqliteStore } from "../sqlite-store.ts";
import { startPostgres } from "./postgres-server.ts";
import type { ContractPlace } from "./store-contract.ts";

/** A place, and what clears it away. */
export interface TestPlace extends ContractPlace {
  readonly end: () => Promise<void>;
}

/** SQLite files in a temporary folder. */
export function sqlitePlace(): TestPlace {
  const folder = mkdtempSync(join(tmpdir(), "studio-store-"));
  let files = 0;
  return {
    openEmpty: () => openSqliteStore(join(folder, `studio-${++files}.db`)),
    reopen: (store) => openSqliteStore(store.place),
    tamper: async (store, statement) => {
      const database = new DatabaseSync(store.place);
      try {
        database.exec(statement);
      } finally {
        database.close();
      }
    },
    end: async () => rmSync(folder, { recursive: true, force: true }),
  };
}

/** A PostgreSQL server of our own; or in a sentence why there is none. */
export async function postgresPlace(): Promise<TestPlace | string> {
  const server = await startPostgres();
  if (typeof server === "string") return server;
  return {
    openEmpty: async () => openPostgresStore(await server.emptyPlace()),
    reopen: (store) => openPostgresStore(store.place),
    tamper: async (store, statement) => {
      const client = new pg.Client({ connectionString: store.place });
      await client.connect();
      try {
        await client.query(statement);
      } finally {
        await client.end();
      }
    },
    end: () => server.stop(),
  };
}
