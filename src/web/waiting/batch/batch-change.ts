import type { WareRecord } from "../../../studio/records/ware-record.ts";
import type { WareFile } from "../../../ware/ware.ts";
import type { NewBatch } from "./batch-draft.ts";

/** Some of a piece's fields; null takes one out that may be left out. */
export type WareFields = { readonly [Field in keyof WareFile]?: WareFile[Field] | null };

/** What `change-ware` is told: any of a batch's fields. */
export interface WareChange extends Partial<Omit<NewBatch, "ware">> {
  readonly ware?: WareFields;
}

/** What makes one batch into the other: only the fields that differ. Null where none does. */
export function changeBetween(before: WareRecord, after: NewBatch): WareChange | null {
  const { ware: wareAfter, ...restAfter } = after;
  const ware = differing(before.ware, wareAfter) as WareFields;
  const rest = differing(before, restAfter, Object.keys(restAfter)) as Omit<WareChange, "ware">;
  const change = { ...rest, ...(Object.keys(ware).length === 0 ? {} : { ware }) };
  return Object.keys(change).length === 0 ? null : change;
}

/** A batch with a change made, as the studio will make it; shown before the studio has answered. */
export function changed(record: WareRecord, { ware, ...rest }: WareChange): WareRecord {
  const merged = { ...record.ware, ...ware } as Record<string, unknown>;
  for (const [field, value] of Object.entries(ware ?? {})) if (value === null) delete merged[field];
  return { ...record, ...rest, ware: merged as unknown as WareFile };
}

function differing(before: object, after: object, fields = [...new Set([...keys(before), ...keys(after)])]): object {
  const was = before as Record<string, unknown>;
  const is = after as Record<string, unknown>;
  const others = fields.filter((field) => JSON.stringify(was[field] ?? null) !== JSON.stringify(is[field] ?? null));
  return Object.fromEntries(others.map((field) => [field, is[field] ?? null]));
}

const keys = (of: object): string[] => Object.keys(of);
