import { type Compilable, type CreateTableBuilder, type SchemaModule, sql } from "kysely";
import type { Engine } from "../database.ts";

/** One statement of a migration: what it reads as, and the doing of it. */
export type Step = Compilable & { execute(): Promise<unknown> };

/**
 * One step in the store's history. Migrations only add: a table, a column, an index. None is ever changed or taken back
 * once it has been let out; the next one stands after it in `all-migrations.ts`.
 */
export interface Migration {
  readonly name: string;
  readonly steps: (schema: SchemaModule, engine: Engine) => readonly Step[];
}

type Held = "text" | "whole" | "number" | "bytes";

/**
 * A table's columns in order: `{ dueOn: "text?" }` holds text or null. Flags are whole numbers and JSON is text, so
 * they need no type of their own.
 */
export function tableOf(
  schema: SchemaModule,
  { types, tableEnd }: Engine,
  name: string,
  columns: Readonly<Record<string, Held | `${Held}?`>>,
): CreateTableBuilder<string, string> {
  let table: CreateTableBuilder<string, string> = schema.createTable(name);
  for (const [column, held] of Object.entries(columns)) {
    const type = types[held.replace("?", "") as Held];
    table = table.addColumn(column, type, (each) => (held.endsWith("?") ? each : each.notNull()));
  }
  return tableEnd === null ? table : table.modifyEnd(sql`${tableEnd}`);
}
