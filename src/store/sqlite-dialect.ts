import { DatabaseSync, type SQLInputValue } from "node:sqlite";
import {
  CompiledQuery,
  type DatabaseConnection,
  type Dialect,
  SqliteAdapter,
  type SqliteDatabase,
  SqliteDriver,
  SqliteIntrospector,
  SqliteQueryCompiler,
  type TransactionSettings,
} from "kysely";
import { BadInput } from "../measures/bad-input.ts";

const BUSY_MS = 10_000;

/**
 * Kysely over the SQLite that Node carries: one connection to one file.
 *
 * @throws BadInput where the file cannot be opened as a database that survives a crash
 */
export function sqliteDialect(file: string): Dialect {
  const database = openFile(file);
  return {
    createAdapter: () => new SqliteAdapter(),
    createDriver: () => new TurnTakingDriver({ database: asKyselyWants(database) }),
    createIntrospector: (db) => new SqliteIntrospector(db),
    createQueryCompiler: () => new SqliteQueryCompiler(),
  };
}

function openFile(file: string): DatabaseSync {
  try {
    const database = new DatabaseSync(file, { timeout: BUSY_MS, enableForeignKeyConstraints: true });
    const mode = database.prepare("pragma journal_mode = wal").get()?.journal_mode;
    if (mode !== "wal") throw new Error(`a file system that bears no write-ahead log (journal mode ${mode})`);
    // Each transaction is on the disk before it is acknowledged: a power cut loses nothing either.
    database.exec("pragma synchronous = full");
    return database;
  } catch (error) {
    const found = error instanceof Error ? error.message : String(error);
    throw new BadInput({
      code: "not-a-store",
      path: file,
      found,
      expected: "a studio's store, or a place for a new one",
    });
  }
}

function asKyselyWants(database: DatabaseSync): SqliteDatabase {
  return {
    close: () => database.close(),
    prepare: (sql) => {
      const statement = database.prepare(sql);
      const values = (parameters: readonly unknown[]) => parameters as readonly SQLInputValue[];
      return {
        reader: statement.columns().length > 0,
        all: (parameters) => statement.all(...values(parameters)),
        run: (parameters) => statement.run(...values(parameters)),
        iterate: (parameters) => statement.iterate(...values(parameters)),
      };
    },
  };
}

/**
 * Takes the write lock when a writing transaction begins, not at its first change: a transaction that has read first
 * and then finds that another process wrote in between could only give up.
 */
class TurnTakingDriver extends SqliteDriver {
  override async beginTransaction(connection: DatabaseConnection, settings?: TransactionSettings): Promise<void> {
    const onlyLooks = settings?.accessMode === "read only";
    if (onlyLooks) await run(connection, "pragma query_only = on");
    await run(connection, onlyLooks ? "begin" : "begin immediate");
  }

  override async commitTransaction(connection: DatabaseConnection): Promise<void> {
    await super.commitTransaction(connection);
    await run(connection, "pragma query_only = off");
  }

  override async rollbackTransaction(connection: DatabaseConnection): Promise<void> {
    await super.rollbackTransaction(connection);
    await run(connection, "pragma query_only = off");
  }
}

const run = (connection: DatabaseConnection, statement: string) =>
  connection.executeQuery(CompiledQuery.raw(statement));
