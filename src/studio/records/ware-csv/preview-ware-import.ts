import { BadInput } from "../../../measures/bad-input.ts";
import { checkRecord } from "../record-kind.ts";
import { WARE, type WareRecord, type WareStage } from "../ware-record.ts";
import { ID_HEADING, WARE_COLUMNS, type WareColumn, type WareDraft, type WareNames } from "./ware-columns.ts";
import { wareRows } from "./ware-rows.ts";

/** What one row of the file will do. */
export interface WareImportRow {
  /** Line of the file, from 1. */
  readonly line: number;
  readonly what: "new" | "changed" | "same" | "refused";
  /** The batch's name, as far as it can be told. */
  readonly name: string;
  /** What will be otherwise, column by column. */
  readonly changes: readonly { readonly heading: string; readonly from: string; readonly to: string }[];
  /** What she should look at before she says yes. */
  readonly notes: readonly string[];
  /** Why the row is refused. */
  readonly reason: string | null;
  /** The batch as it will be, and as it was. */
  readonly after: WareRecord | null;
  readonly before: WareRecord | null;
}

/** What an import will do, before anything is done. */
export interface WareImport {
  readonly rows: readonly WareImportRow[];
  readonly leftAside: readonly string[];
}

export interface WareImportSetting extends WareNames {
  /** The ware there is. */
  readonly ware: readonly WareRecord[];
  /** The stage of new ware where the file has no such column; null where it must say. */
  readonly stage: WareStage | null;
  /** Gives a new id each time. */
  readonly newId: () => string;
  /** The moment, ISO 8601 in UTC. */
  readonly now: string;
}

/**
 * Says what a ware list would do. A row with the id of a batch changes that batch, in the columns the file has and no
 * others; any other row is a new batch. Nothing is kept yet.
 *
 * @throws BadInput where the file as a whole cannot be read; what is wrong with one row stands in that row
 */
export function previewWareImport(text: string, setting: WareImportSetting): WareImport {
  const { rows, leftAside } = wareRows(text);
  const there = new Map(setting.ware.map((record) => [record.id, record]));
  const seen = new Map<string, number>();
  return {
    leftAside,
    rows: rows.map(({ line, cells }) => {
      const id = cells.get(ID_HEADING)?.trim() ?? "";
      const before = there.get(id) ?? null;
      const refused = (reason: string): WareImportRow => {
        const name = cells.get("name") ?? before?.ware.name ?? "";
        return { line, what: "refused", name, changes: [], notes: [], reason, after: null, before };
      };
      const earlier = seen.get(id);
      if (id !== "" && earlier !== undefined) return refused(`Line ${earlier} has the id ${id} already.`);
      seen.set(id, line);
      try {
        return previewRow(line, cells, before, id === "" ? setting.newId() : id, setting);
      } catch (error) {
        if (error instanceof BadInput) return refused(error.message);
        throw error;
      }
    }),
  };
}

function previewRow(
  line: number,
  cells: ReadonlyMap<string, string>,
  before: WareRecord | null,
  id: string,
  setting: WareImportSetting,
): WareImportRow {
  const draft = before ? { ...before, ware: { ...before.ware } } : emptyDraft(id, setting);
  const changes: { heading: string; from: string; to: string }[] = [];
  const notes: string[] = [];
  for (const column of WARE_COLUMNS) {
    const cell = cells.get(column.heading);
    const from = before ? column.write(before, setting) : "";
    // What stands there already is not read again: a name two glazes share still means the one it meant.
    if (cell === undefined || cell === from) continue;
    const note = fill(column, draft, cell, setting);
    if (note !== undefined) notes.push(note);
    const to = column.write(draft, setting);
    if (to !== from) changes.push({ heading: column.heading, from, to });
  }
  const alike = before ? undefined : setting.ware.find(({ ware }) => ware.name === draft.ware.name);
  if (alike) notes.push("There is ware of this name already; this is a batch beside it.");
  const changed = before === null || changes.length > 0;
  const after = { ...draft, changedAt: changed ? setting.now : draft.changedAt };
  checkRecord(WARE, after, "");
  const what = before === null ? "new" : changed ? "changed" : "same";
  return { line, what, name: draft.ware.name, changes, notes, reason: null, after, before };
}

function fill(column: WareColumn, draft: WareDraft, cell: string, names: WareNames): string | undefined {
  if (cell.trim() !== "") return column.read(draft, cell, names);
  column.clear(draft);
  return undefined;
}

/** A batch of which nothing is known; what the file leaves out and must be said, the check will ask for. */
const emptyDraft = (id: string, { stage, now }: WareImportSetting): WareDraft =>
  ({
    id,
    ware: {},
    ...(stage === null ? {} : { stage }),
    firingKind: null,
    dueOn: null,
    ownerNote: "",
    clayBodyId: null,
    glazeId: null,
    createdAt: now,
    changedAt: now,
  }) as unknown as WareDraft;
