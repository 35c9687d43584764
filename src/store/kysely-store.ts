import { AsyncLocalStorage } from "node:async_hooks";
import { BadInput } from "../measures/bad-input.ts";
import { KINDS } from "../studio/records/all-kinds.ts";
import { KIND_NAMES } from "../studio/records/record-kind.ts";
import type { StudioRecords, StudioStore } from "../studio/records/store.ts";
import { type Database, type Engine, reading, writing } from "./database.ts";
import { historyRows } from "./history-rows.ts";
import { migrate } from "./migrations/migrate.ts";
import { photoRows } from "./photo-rows.ts";
import { readingRows } from "./reading-rows.ts";
import { recordRows } from "./record-rows.ts";
import { settingsRow } from "./settings-row.ts";

/** The store over any database that Kysely speaks to, brought to the present schema first. */
export async function openStoreOver(database: Database, engine: Engine, place: string): Promise<StudioStore> {
  try {
    await migrate(database, engine, place);
  } catch (error) {
    await database.destroy();
    throw inOurWords(error, place);
  }
  const inside = new AsyncLocalStorage<true>();
  const alone = async <Result>(work: () => Promise<Result>): Promise<Result> => {
    if (inside.getStore()) throw new Error("A read or write inside another of the same store would wait for itself.");
    try {
      return await inside.run(true, work);
    } catch (error) {
      throw inOurWords(error, place);
    }
  };
  return {
    place,
    read: (look) => alone(() => reading(database, (transaction) => look(recordsIn(transaction)))),
    write: (change) => alone(() => writing(database, engine, (transaction) => change(recordsIn(transaction)))),
    close: () => database.destroy(),
  };
}

function recordsIn(transaction: Database): StudioRecords {
  return {
    kilns: recordRows(transaction, KINDS.kilns),
    clayBodies: recordRows(transaction, KINDS.clayBodies),
    glazes: recordRows(transaction, KINDS.glazes),
    ware: recordRows(transaction, KINDS.ware),
    loads: recordRows(transaction, KINDS.loads),
    firings: recordRows(transaction, KINDS.firings),
    notes: recordRows(transaction, KINDS.notes),
    photos: photoRows(transaction),
    programmes: recordRows(transaction, KINDS.programmes),
    calibrations: recordRows(transaction, KINDS.calibrations),
    upkeep: recordRows(transaction, KINDS.upkeep),
    loggers: recordRows(transaction, KINDS.loggers),
    readings: readingRows(transaction),
    settings: settingsRow(transaction),
    history: historyRows(transaction),
    isEmpty: async () => {
      for (const kind of KIND_NAMES) {
        if (await transaction.selectFrom(kind).select("id").limit(1).executeTakeFirst()) return false;
      }
      return true;
    },
    clear: async () => {
      for (const kind of [...KIND_NAMES].reverse()) await transaction.deleteFrom(kind).execute();
      for (const table of ["history", "settings"]) await transaction.deleteFrom(table).execute();
    },
  };
}

const SQLITE_BUSY = 5;

/** A lock that never came is worth its own sentence; everything else is passed on. */
function inOurWords(error: unknown, place: string): unknown {
  const code = (error as { errcode?: unknown } | null)?.errcode;
  if (typeof code !== "number" || (code & 0xff) !== SQLITE_BUSY) return error;
  return new BadInput({
    code: "store-busy",
    path: place,
    found: "another program that has been writing for more than ten seconds",
    expected: "a turn to write: try again, or end the other program",
  });
}
