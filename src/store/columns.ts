import type { TObject } from "typebox";
import { BadInput, shown } from "../measures/bad-input.ts";
import { type RecordKind, readRecord } from "../studio/records/record-kind.ts";
import { corruptRow, recordPath } from "../studio/records/refusals.ts";
import type { Cell, Row } from "./database.ts";
import { fromJson } from "./from-json.ts";

/** How a field of a record is kept in its table. */
export interface Column {
  readonly name: string;
  readonly holds: "text" | "whole" | "number" | "flag" | "json";
  readonly orNull: boolean;
  /** True for a field that may be left out: null in its column says that it is. */
  readonly mayBeLeftOut: boolean;
}

interface Field {
  readonly type?: string;
  readonly anyOf?: readonly Field[];
}

const HELD: Readonly<Record<string, Column["holds"]>> = {
  string: "text",
  integer: "whole",
  number: "number",
  boolean: "flag",
};

/** The columns of a kind's table: one for each field, by the field's own name. */
export const columnsOf = (schema: TObject): Column[] => {
  const required: readonly string[] = schema.required ?? [];
  return Object.entries(schema.properties as Record<string, Field>).map(([name, field]) => {
    const choices = field.anyOf ?? [field];
    const solid = choices.filter((choice) => choice.type !== "null");
    const types = new Set(solid.flatMap((choice) => (choice.anyOf ?? [choice]).map((each) => each.type ?? "object")));
    const [type] = types;
    const holds = types.size === 1 && type !== undefined ? (HELD[type] ?? "json") : "json";
    const mayBeLeftOut = !required.includes(name);
    return { name, holds, orNull: mayBeLeftOut || solid.length < choices.length, mayBeLeftOut };
  });
};

/** A checked record as a row. */
export function toRow(columns: readonly Column[], record: object): Row {
  const row: Row = {};
  for (const { name, holds } of columns) row[name] = toCell(holds, (record as Record<string, unknown>)[name]);
  return row;
}

export function toCell(holds: Column["holds"], value: unknown): Cell {
  if (value === null || value === undefined) return null;
  if (holds === "flag") return value === true ? 1 : 0;
  if (holds === "json") return JSON.stringify(value);
  return value as string | number;
}

/**
 * A row as the record it keeps.
 *
 * @throws BadInput `corrupt-row` naming the record and the field, where the row is not one that was written here
 */
export function fromRow<Record>(kind: RecordKind, columns: readonly Column[], row: Row): Record {
  const path = recordPath(kind, row.id);
  const record: { [field: string]: unknown } = {};
  for (const { name, holds, mayBeLeftOut } of columns) {
    const cell = row[name] as Cell;
    if (cell !== null || !mayBeLeftOut) record[name] = fromCell(holds, cell, `${path}.${name}`);
  }
  try {
    return readRecord(kind, record, path) as Record;
  } catch (error) {
    if (error instanceof BadInput) throw corruptRow(error.path, error.found, error.expected);
    throw error;
  }
}

function fromCell(holds: Column["holds"], cell: Cell, path: string): unknown {
  if (cell === null) return null;
  if (holds === "flag") {
    if (cell === 0 || cell === 1) return cell === 1;
    throw corruptRow(path, shown(cell), "0 or 1");
  }
  if (holds !== "json") return cell;
  return fromJson(cell, path);
}
