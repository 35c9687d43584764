import { BadInput } from "../../measures/bad-input.ts";
import type { CommandAnswer } from "../api/contract.ts";
import type { CommandContext } from "../commands/command.ts";
import { checkId } from "../records/fields.ts";
import type { HistoryStanding, KeptEntry } from "../records/history.ts";
import type { StudioRecords, StudioStore } from "../records/store.ts";
import { asTheyAre, entryOf } from "./answers.ts";
import { keepTaken } from "./keep-taken.ts";
import { recording } from "./recording.ts";

/** What is to be done, and how it is called. */
export interface Doing {
  readonly command: string;
  readonly scope: string;
  /** @returns what was done, in words */
  readonly run: (records: StudioRecords) => Promise<string>;
}

/** What a command is told besides its input, and the key that makes it happen once. */
export interface CallContext extends CommandContext {
  /** 1 to 64 letters, digits, - or _. */
  readonly key: string;
}

/**
 * Does something in one transaction and writes down beside it what it changed.
 *
 * A key that was used before does nothing: the answer is the entry it made then, with its records as they are now, so
 * that a browser that asks again is never told what is no longer so.
 *
 * @throws BadInput where it cannot be done, or the key is another command's; then nothing has happened
 */
export async function doRecorded(store: StudioStore, doing: Doing, context: CallContext): Promise<CommandAnswer> {
  checkId(context.key, "key");
  return store.write(async (records) => {
    const earlier = await records.history.get(context.key);
    if (earlier !== null) return answerAgain(records, earlier, doing.command);
    const watch = recording(records);
    const summary = await doing.run(watch.records);
    const [changes, settings] = [watch.changes(), watch.settings()];
    const standing: HistoryStanding = changes.length === 0 && settings === null ? "nothing" : "done";
    const { command, scope } = doing;
    const entry: KeptEntry = { id: context.key, at: context.now, scope, command, summary, standing, changes, settings };
    if (standing === "done") await leaveBehind(records, scope);
    await records.history.add(entry);
    await keepTaken(records, entry.id, watch);
    return { entry: entryOf(entry), changed: watch.changed(), settingsChanged: settings !== null };
  });
}

async function answerAgain(records: StudioRecords, entry: KeptEntry, command: string): Promise<CommandAnswer> {
  if (entry.command === command) {
    return {
      entry: entryOf(entry),
      changed: await asTheyAre(records, entry),
      settingsChanged: entry.settings !== null,
    };
  }
  throw new BadInput({
    code: "id-taken",
    path: "key",
    found: `"${entry.id}", the key of ${entry.command}`,
    expected: "a key of its own for each command",
  });
}

/** What was undone cannot be done again on top of something new; only that it was done once is remembered. */
async function leaveBehind(records: StudioRecords, scope: string): Promise<void> {
  for (const card of await records.history.list(scope)) {
    if (card.standing === "done") return;
    await records.history.change({ ...card, standing: "left behind", changes: [], settings: null });
  }
}
