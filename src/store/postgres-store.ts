import { Kysely, PostgresDialect, sql } from "kysely";
import pg from "pg";
import type { StudioStore } from "../studio/records/store.ts";
import type { Engine, Tables } from "./database.ts";
import { openStoreOver } from "./kysely-store.ts";

const INT8 = 20;
const plainCollation = sql`text collate "C"`;

export const POSTGRES: Engine = {
  name: "postgres",
  types: { text: plainCollation, whole: sql`integer`, number: sql`double precision`, bytes: sql`bytea` },
  tableEnd: null,
  // One writer at a time per schema, as in SQLite: no transaction fails because another came between.
  takeTurn: async (transaction) => {
    await sql`select pg_advisory_xact_lock(hashtext('wareboard ' || current_schema()))`.execute(transaction);
  },
};

/**
 * Opens the store in a PostgreSQL database (15 or later), making its tables in the first schema of the search path
 * where there are none.
 *
 * @param connectionString such as `postgres://studio@localhost/studio`
 * @throws BadInput where the database holds the store of a newer Wareboard; the client's error where it cannot connect
 */
export async function openPostgresStore(connectionString: string): Promise<StudioStore> {
  const pool = new pg.Pool({ connectionString, max: 4, types: { getTypeParser: typeParser } });
  // A connection lost while idle is replaced when next needed; unheard, the event would end the process.
  pool.on("error", () => {});
  const database = new Kysely<Tables>({ dialect: new PostgresDialect({ pool }) });
  return openStoreOver(database, POSTGRES, placeWithoutPassword(connectionString));
}

/** Counts come as int8, which `pg` gives as text: none here passes 2^53. */
const typeParser: typeof pg.types.getTypeParser = ((oid: number, format?: "text") =>
  oid === INT8 ? Number : pg.types.getTypeParser(oid, format)) as typeof pg.types.getTypeParser;

function placeWithoutPassword(connectionString: string): string {
  return connectionString.replace(/\/\/([^:@/]*):[^@/]*@/, "//$1:…@").replace(/([?&]password=)[^&]*/i, "$1…");
}
