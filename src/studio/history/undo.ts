import { BadInput } from "../../measures/bad-input.ts";
import type { CommandAnswer, HistoryEntry } from "../api/contract.ts";
import { KINDS } from "../records/all-kinds.ts";
import type { Fields, KeptEntry, RecordChange } from "../records/history.ts";
import type { PhotoRecord } from "../records/note-and-photo-records.ts";
import { recordPath } from "../records/refusals.ts";
import type { RecordSet, StudioRecords, StudioStore } from "../records/store.ts";
import { entryOf } from "./answers.ts";
import { keepTaken } from "./keep-taken.ts";
import { isAsBefore, turnedRound, withChange } from "./record-change.ts";
import { recording } from "./recording.ts";
import { sameValue } from "./same-value.ts";

/** The done and undone things of a scope, the newest first. */
export const history = (store: StudioStore, scope: string): Promise<HistoryEntry[]> =>
  store.read(async (records) => (await records.history.list(scope)).map(entryOf));

/**
 * Takes back the newest thing of a scope that stands: every record it touched becomes as it was before.
 *
 * @throws BadInput `nothing-to-undo`; `changed-since` where a record is no longer as it was left; or what the store says,
 *   such as `still-in-use`. Then nothing has happened
 */
export const undo = (store: StudioStore, scope: string): Promise<CommandAnswer> => step(store, scope, "undone");

/** Does again the thing of a scope that was undone last. @throws BadInput as `undo` does */
export const redo = (store: StudioStore, scope: string): Promise<CommandAnswer> => step(store, scope, "done");

function step(store: StudioStore, scope: string, to: "undone" | "done"): Promise<CommandAnswer> {
  return store.write(async (records) => {
    const cards = await records.history.list(scope);
    const card =
      to === "undone"
        ? cards.find(({ standing }) => standing === "done")
        : cards.findLast(({ standing }) => standing === "undone");
    const entry = card && (await records.history.get(card.id));
    if (!entry) throw nothingTo(to, scope);
    const watch = recording(records);
    const changes: RecordChange[] = [];
    // Backwards through what was done, the last first: what refers to a record is gone before that one is.
    const wanted = to === "undone" ? entry.changes.map(turnedRound).reverse() : entry.changes;
    // Temperatures are no command's to change; those that went with a firing come back with it all the same.
    const within: StudioRecords = { ...watch.records, readings: records.readings };
    for (const change of wanted) changes.push(await apply(within, change, entry));
    if (entry.settings) await applySettings(watch.records, entry, to);
    await keepTaken(records, entry.id, watch);
    const applied = to === "undone" ? changes.map(turnedRound).reverse() : changes;
    const now: KeptEntry = { ...entry, standing: to, changes: applied };
    await records.history.change(now);
    return { entry: entryOf(now), changed: watch.changed(), settingsChanged: watch.settings() !== null };
  });
}

/** Makes a record as a change leaves it. Gives the change as it came about: a record taken out, as it last was. */
async function apply(records: StudioRecords, change: RecordChange, entry: KeptEntry): Promise<RecordChange> {
  const set = records[change.kind] as unknown as RecordSet<Fields & { readonly id: string }>;
  const record = await set.get(change.id);
  if (!isAsBefore(record, change)) throw changedSince(change, entry, record !== null);
  if (record === null) {
    await putBack(records, change, entry);
    return change;
  }
  if (change.after === null) {
    await set.remove(change.id);
    return { ...change, before: record };
  }
  await set.change(withChange(record, change));
  return change;
}

async function putBack(records: StudioRecords, change: RecordChange, entry: KeptEntry): Promise<void> {
  const { version, ...rest } = change.after as Fields;
  // Whoever still holds the load as it was before it was taken out must read it again.
  const record = typeof version === "number" ? { ...rest, version: version + 1 } : change.after;
  if (change.kind !== "photos") {
    const set = records[change.kind] as unknown as RecordSet<unknown>;
    await set.add(record);
    if (change.kind === "firings") await putReadingsBack(records, change.id, entry);
    return;
  }
  const picture = await records.history.picture(entry.id, change.id);
  if (picture === null) throw changedSince(change, entry, false);
  return records.photos.add(record as PhotoRecord, picture);
}

async function putReadingsBack(records: StudioRecords, firingId: string, entry: KeptEntry): Promise<void> {
  for (const { probe, readings } of await records.history.readings(entry.id, firingId)) {
    await records.readings.add(firingId, probe, readings);
  }
}

async function applySettings(
  records: StudioRecords,
  { settings, ...entry }: KeptEntry,
  to: "undone" | "done",
): Promise<void> {
  if (settings === null) return;
  const [from, into] = to === "undone" ? [settings.after, settings.before] : [settings.before, settings.after];
  const now = await records.settings.get();
  if (!sameValue(now, from)) {
    throw new BadInput({
      code: "changed-since",
      path: "settings",
      found: `settings changed after "${entry.summary}"`,
      expected: "the settings as that left them; change them by hand instead",
    });
  }
  await records.settings.put(into);
}

const nothingTo = (to: "undone" | "done", scope: string): BadInput =>
  new BadInput({
    code: to === "undone" ? "nothing-to-undo" : "nothing-to-redo",
    path: scope,
    found: "nothing left",
    expected:
      to === "undone" ? "something done here that still stands" : "something undone here, and nothing done since",
  });

function changedSince({ kind, id }: RecordChange, { summary }: KeptEntry, isThere: boolean): BadInput {
  return new BadInput({
    code: "changed-since",
    path: recordPath(KINDS[kind], id),
    found: isThere ? `a change made after "${summary}"` : `a ${KINDS[kind].one} that is gone since "${summary}"`,
    expected: `the ${KINDS[kind].one} as that left it; take the later change back first, or change it by hand`,
  });
}
