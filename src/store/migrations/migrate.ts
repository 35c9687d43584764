import { BadInput } from "../../measures/bad-input.ts";
import { type Database, type Engine, writing } from "../database.ts";
import { MIGRATIONS } from "./all-migrations.ts";

const TABLE = "migrations";

/**
 * Brings a database to the present schema: all missing migrations in one transaction, or none.
 *
 * @param place where the store is, for the error
 * @throws BadInput where the database has been through a migration this Wareboard does not know
 */
export async function migrate(database: Database, engine: Engine, place: string): Promise<void> {
  if ((await missing(database, place).catch(() => null))?.length === 0) return;
  await writing(database, engine, async (transaction) => {
    await transaction.schema
      .createTable(TABLE)
      .ifNotExists()
      .addColumn("name", engine.types.text, (column) => column.primaryKey())
      .execute();
    for (const { name, steps } of await missing(transaction, place)) {
      for (const step of steps(transaction.schema, engine)) await step.execute();
      await transaction.insertInto(TABLE).values({ name }).execute();
    }
  });
}

async function missing(database: Database, place: string) {
  const rows = await database.selectFrom(TABLE).select("name").orderBy("name").execute();
  const done = new Set(rows.map((row) => row.name));
  const unknown = rows.find((row) => !MIGRATIONS.some(({ name }) => name === row.name));
  if (unknown) {
    throw new BadInput({
      code: "newer-store",
      path: place,
      found: `a store that has been through "${unknown.name}"`,
      expected: "a store of this Wareboard or an older one; use the newer Wareboard",
    });
  }
  return MIGRATIONS.filter(({ name }) => !done.has(name));
}
