import type { Fields, RecordChange } from "../records/history.ts";
import type { KindName } from "../records/record-kind.ts";
import { sameValue } from "./same-value.ts";

type Kept = Fields & { readonly id: string };

/** A load's version counts its changes and only ever rises: it is nobody's to take back. */
const COUNTED = "version";
/** When it was changed last says nothing of what was changed: two changes of other fields do not stand in each other's way. */
const STAMPED = "changedAt";

/** What became of a record, or null where nothing did. */
export function changeOf(kind: KindName, id: string, before: Fields | null, after: Fields | null): RecordChange | null {
  if (before === null && after === null) return null;
  if (before === null || after === null) return { kind, id, before, after };
  const differing = [...new Set([...Object.keys(before), ...Object.keys(after)])].filter(
    (name) => name !== COUNTED && !sameValue(before[name], after[name]),
  );
  if (differing.length === 0) return null;
  return { kind, id, before: only(before, differing), after: only(after, differing) };
}

/** The change the other way round. */
export const turnedRound = ({ kind, id, before, after }: RecordChange): RecordChange => ({
  kind,
  id,
  before: after,
  after: before,
});

/** Whether a record is as a change found it, in every field the change is about. */
export function isAsBefore(record: Kept | null, { before, after }: RecordChange): boolean {
  if (record === null || before === null) return record === null && before === null;
  const about = Object.keys({ ...before, ...after }).filter((name) => name !== COUNTED && name !== STAMPED);
  return sameValue(only(record, about), only(before, about));
}

/** The record as a change leaves it. A field it does not name stays as it is. */
export function withChange(record: Kept, { before, after }: RecordChange): Kept {
  const untouched = Object.keys(record).filter((name) => !(before !== null && name in before));
  return { ...only(record, untouched), ...after } as Kept;
}

const only = (record: Fields, names: readonly string[]): Fields =>
  Object.fromEntries(names.filter((name) => record[name] !== undefined).map((name) => [name, record[name]]));
