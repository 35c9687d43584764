import type { Kysely, RawBuilder } from "kysely";

/** What a column can hold: flags are 0 or 1, lists and objects JSON text. */
export type Cell = string | number | Uint8Array | null;
export type Row = Record<string, Cell>;

/** The tables' columns are derived from the records' schemas as the program runs, so the compiler knows only cells. */
export type Tables = Record<string, Row>;
export type Database = Kysely<Tables>;

/** In what the two databases differ. */
export interface Engine {
  readonly name: "sqlite" | "postgres";
  /** Column types. Text sorts by code, never by language, so that both give one order. */
  readonly types: Readonly<Record<"text" | "whole" | "number" | "bytes", RawBuilder<unknown>>>;
  /** What stands after a table's closing bracket. */
  readonly tableEnd: RawBuilder<unknown> | null;
  /** Waits until no other writer is at work; the turn ends with the transaction. */
  readonly takeTurn: (transaction: Database) => Promise<void>;
}

/** A transaction that only looks, at the studio as it was at one moment. */
export const reading = <Result>(database: Database, look: (transaction: Database) => Promise<Result>) =>
  database.transaction().setAccessMode("read only").setIsolationLevel("repeatable read").execute(look);

/** A transaction that changes, alone until it ends. */
export const writing = <Result>(
  database: Database,
  engine: Engine,
  change: (transaction: Database) => Promise<Result>,
) =>
  database
    .transaction()
    .setAccessMode("read write")
    .setIsolationLevel("read committed")
    .execute(async (transaction) => {
      await engine.takeTurn(transaction);
      return change(transaction);
    });
