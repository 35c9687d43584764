import type { Static, TObject } from "typebox";
import { KINDS } from "../studio/records/all-kinds.ts";
import { checkRecord, type KindName, type RecordKind } from "../studio/records/record-kind.ts";
import {
  changedSince,
  idTaken,
  missingReference,
  recordPath,
  stillInUse,
  unknownRecord,
} from "../studio/records/refusals.ts";
import type { RecordSet, Where } from "../studio/records/store.ts";
import { columnsOf, fromRow, toCell, toRow } from "./columns.ts";
import type { Database, Row } from "./database.ts";
import { inParts } from "./in-parts.ts";

/** The records of one kind in their table, inside a transaction. */
export function recordRows<Schema extends TObject>(
  database: Database,
  kind: RecordKind<Schema>,
): RecordSet<Static<Schema>> {
  type Kept = Static<Schema>;
  const table = kind.name;
  const columns = columnsOf(kind.schema);
  const keep = (record: Kept): Row => toRow(columns, record as object);
  const find = async (id: string): Promise<Kept | null> => {
    const row = await database.selectFrom(table).selectAll().where("id", "=", id).executeTakeFirst();
    return row ? fromRow<Kept>(kind, columns, row) : null;
  };

  return {
    get: find,
    list: async (where = {}) => {
      let query = database.selectFrom(table).selectAll();
      for (const [field, value] of plainFields(where)) {
        const column = columns.find(({ name, holds }) => name === field && holds !== "json");
        if (!column) throw new Error(`Records of ${table} cannot be asked for by ${field}.`);
        const cell = toCell(column.holds, value);
        query = cell === null ? query.where(field, "is", null) : query.where(field, "=", cell);
      }
      const rows = await query.orderBy("createdAt").orderBy("id").execute();
      return rows.map((row) => fromRow<Kept>(kind, columns, row));
    },
    count: async () => {
      const counted = await database
        .selectFrom(table)
        .select(({ fn }) => fn.countAll().as("many"))
        .executeTakeFirst();
      return Number(counted?.many);
    },
    add: async (...records) => {
      const rows = records.map((record) => keep(checkRecord(kind, record, pathOf(kind, record))));
      const ids = rows.map((row) => row.id as string);
      const twice = ids.find((id, i) => ids.indexOf(id) !== i) ?? (await idsKept(database, table, ids))[0];
      if (twice !== undefined) throw idTaken(kind, twice);
      await checkReferences(database, kind, rows);
      for (const part of inParts(rows, columns.length)) await database.insertInto(table).values(part).execute();
    },
    change: async (record) => {
      const checked = checkRecord(kind, record, pathOf(kind, record));
      const row = keep(checked);
      const id = row.id as string;
      const kept = await database.selectFrom(table).selectAll().where("id", "=", id).executeTakeFirst();
      if (!kept) throw unknownRecord(kind, id);
      await checkReferences(database, kind, [row]);
      if (kind.versioned) {
        const [given, there] = [row.version as number, kept.version as number];
        if (given !== there) throw changedSince(kind, id, given, there);
        row.version = given + 1;
      }
      await database.updateTable(table).set(row).where("id", "=", id).execute();
      return fromRow<Kept>(kind, columns, row);
    },
    remove: async (id) => {
      if ((await idsKept(database, table, [id])).length === 0) throw unknownRecord(kind, id);
      await checkUnused(database, kind, id);
      await database.deleteFrom(table).where("id", "=", id).execute();
    },
  };
}

const plainFields = <R>(where: Where<R>): [string, unknown][] =>
  Object.entries(where).filter(([, value]) => value !== undefined);

const pathOf = (kind: RecordKind, record: unknown): string => recordPath(kind, (record as { id?: unknown } | null)?.id);

/** Which of the ids the table holds. */
async function idsKept(database: Database, table: KindName, ids: readonly string[]): Promise<string[]> {
  const found: string[] = [];
  for (const part of inParts(ids, 1)) {
    const rows = await database.selectFrom(table).select("id").where("id", "in", part).execute();
    found.push(...rows.map((row) => row.id as string));
  }
  return found;
}

/** The databases check this too, but name neither the field nor the record, and not in the same way. */
async function checkReferences(database: Database, kind: RecordKind, rows: readonly Row[]): Promise<void> {
  for (const [field, to] of Object.entries(kind.refersTo)) {
    const wanted = new Set(rows.flatMap((row) => (row[field] === null ? [] : [row[field] as string])));
    const there = new Set(await idsKept(database, to, [...wanted]));
    const row = rows.find((each) => each[field] !== null && !there.has(each[field] as string));
    if (row) throw missingReference(`${recordPath(kind, row.id)}.${field}`, KINDS[to], row[field] as string);
  }
}

async function checkUnused(database: Database, kind: RecordKind, id: string): Promise<void> {
  for (const other of Object.values(KINDS) as RecordKind[]) {
    for (const [field, to] of Object.entries(other.refersTo)) {
      if (to !== kind.name) continue;
      const user = await database.selectFrom(other.name).select("id").where(field, "=", id).executeTakeFirst();
      if (user) throw stillInUse(kind, id, recordPath(other, user.id));
    }
  }
}
