import { Type } from "typebox";
import { Id } from "../records/fields.ts";
import { FiringNoticeSchema } from "../records/firing-parts.ts";
import { FIRINGS } from "../records/firing-record.ts";
import { command, input } from "./inputs.ts";
import { changeKept, kept } from "./keeping.ts";

/** What a firing's record holds at most; the oldest go first. */
const MOST_NOTICES = 1000;

/** Writes down with a firing what was noticed, or that it is over: each by its id, the others stay. */
const noteNotices = command({
  name: "note-notices",
  schema: input({
    id: Id("The firing."),
    notices: Type.Array(FiringNoticeSchema, { minItems: 1, maxItems: MOST_NOTICES }),
  }),
  // Apart from the firing's own scope: undoing what she did last must not take back what was seen meanwhile.
  scope: ({ id }) => `notices:${id}`,
  run: async (records, { id, notices }, { now }) => {
    const before = await kept(records.firings, FIRINGS, id);
    const byId = new Map([...(before.notices ?? []), ...notices].map((notice) => [notice.id, notice]));
    const all = [...byId.values()].sort((a, b) => (a.since < b.since ? -1 : 1)).slice(-MOST_NOTICES);
    await changeKept(records.firings, before, { ...before, notices: all }, now);
    return `Noticed in ${before.name}: ${[...new Set(notices.map(({ kind }) => kind))].join(", ")}`;
  },
});

export const NOTICE_COMMANDS = [noteNotices];
