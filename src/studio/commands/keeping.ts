import { sameValue } from "../history/same-value.ts";
import type { RecordKind } from "../records/record-kind.ts";
import { unknownRecord } from "../records/refusals.ts";
import type { RecordSet } from "../records/store.ts";
import type { CommandContext } from "./command.ts";

interface Stamped {
  readonly id: string;
  readonly createdAt: string;
  readonly changedAt: string;
}

/** The record of an id. @throws BadInput `unknown-record` where there is none */
export async function kept<R>(set: Pick<RecordSet<R>, "get">, kind: RecordKind, id: string): Promise<R> {
  const record = await set.get(id);
  if (record === null) throw unknownRecord(kind, id);
  return record;
}

/** What a new record begins with: its id, given or made, and its times. */
export const begun = (id: string | undefined, { newId, now }: CommandContext): Stamped => ({
  id: id ?? newId(),
  createdAt: now,
  changedAt: now,
});

/** Keeps a changed record; one that is as it was stays untouched. */
export async function changeKept<R extends Stamped>(
  set: Pick<RecordSet<R>, "change">,
  before: R,
  after: R,
  now: string,
): Promise<R> {
  return sameValue(before, after) ? before : set.change({ ...after, changedAt: now });
}

/** The fields of an input that were given. */
export const given = <Input extends object>(input: Input): { [Name in keyof Input]: Exclude<Input[Name], undefined> } =>
  Object.fromEntries(Object.entries(input).filter(([, value]) => value !== undefined)) as never;
