import type { Static, TObject } from "typebox";
import { BadInput, shown } from "../../measures/bad-input.ts";
import { readBySchema } from "../../measures/read-schema.ts";
import type { CommandAnswer } from "../api/contract.ts";
import { type CallContext, doRecorded } from "../history/do-recorded.ts";
import type { StudioStore } from "../records/store.ts";
import { ALL_COMMANDS } from "./all-commands.ts";
import type { StudioCommand } from "./command.ts";

/**
 * Does one command: its input is held to its schema, all of it happens in one transaction, and what it changed is
 * written down so that it can be undone. The same key again does nothing more.
 *
 * @param name such as "add-ware"
 * @param input as it came from outside
 * @throws BadInput where there is no such command, or it cannot be done; then nothing has happened
 */
export async function doCommand(
  store: StudioStore,
  name: string,
  input: unknown,
  context: CallContext,
): Promise<CommandAnswer> {
  const command = ALL_COMMANDS.get(name);
  if (command === undefined) {
    const expected = [...ALL_COMMANDS.keys()].join(", ");
    throw new BadInput({ code: "unknown-command", path: "command", found: shown(name), expected });
  }
  const read = readBySchema(command.schema, input);
  const found = command.beforehand && (await reckoned(store, command.beforehand, read, context.key));
  const doing = {
    command: name,
    scope: command.scope(read),
    run: (records: Parameters<typeof command.run>[0]) => command.run(records, read, context, found),
  };
  return doRecorded(store, doing, context);
}

/** What a command reckons beforehand. A key that was used before does nothing more, so nothing is reckoned for it. */
async function reckoned(
  store: StudioStore,
  beforehand: NonNullable<StudioCommand["beforehand"]>,
  input: Static<TObject>,
  key: string,
): Promise<unknown> {
  const reckon = await store.read(async (records) =>
    (await records.history.get(key)) === null ? beforehand(records, input) : null,
  );
  return reckon?.();
}
