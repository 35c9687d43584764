import { BadInput } from "../../measures/bad-input.ts";
import type { RecordKind } from "./record-kind.ts";

/** How a record is named in an error's path: `ware "w1"`. */
export const recordPath = (kind: RecordKind, id: unknown): string =>
  `${kind.one} ${JSON.stringify(id) ?? "without id"}`;

/** The store's own refusals, each in one sentence. */
export const idTaken = (kind: RecordKind, id: string): BadInput =>
  new BadInput({
    code: "id-taken",
    path: recordPath(kind, id),
    found: "a record of that id already kept",
    expected: "an id of its own for a new record, or a change to the one there",
  });

export const unknownRecord = (kind: RecordKind, id: string): BadInput =>
  new BadInput({
    code: "unknown-record",
    path: recordPath(kind, id),
    found: "no such record",
    expected: `a ${kind.one} that is kept; it may have been taken out meanwhile`,
  });

export const missingReference = (path: string, to: RecordKind, id: string): BadInput =>
  new BadInput({
    code: "missing-reference",
    path,
    found: `${recordPath(to, id)}, which is not kept`,
    expected: `a ${to.one} that is kept, or keep that one first`,
  });

export const stillInUse = (kind: RecordKind, id: string, by: string): BadInput =>
  new BadInput({
    code: "still-in-use",
    path: recordPath(kind, id),
    found: `${by} that refers to it`,
    expected: "nothing that refers to it; change or take that out first",
  });

export const changedSince = (kind: RecordKind, id: string, given: number, kept: number): BadInput =>
  new BadInput({
    code: "changed-since",
    path: `${recordPath(kind, id)}.version`,
    found: `version ${given}`,
    expected: `version ${kept}, which is kept now: read it again and make the change on that`,
  });

export const corruptRow = (path: string, found: string, expected: string): BadInput =>
  new BadInput({
    code: "corrupt-row",
    path,
    found: `${found} in the store itself`,
    expected: `${expected}; the row was changed from outside or damaged, so restore a backup into a new store`,
  });
