import { randomUUID } from "node:crypto";
import { readFileSync } from "node:fs";
import { BadInput } from "../measures/bad-input.ts";
import { readJson } from "../measures/read-json.ts";
import { ALL_COMMANDS } from "../studio/commands/all-commands.ts";
import { doCommand } from "../studio/commands/do-command.ts";
import { undo } from "../studio/history/undo.ts";
import { type Command, type ExitCode, printJson, printLines } from "./command.ts";
import { readTextFile } from "./files.ts";
import { DATA_OPTION_HELP, withStudio } from "./studio-folder.ts";

/** `wareboard do`: everything that the screens can do to a studio, from the terminal; each thing once, and undoable. */
export const doInStudio: Command = {
  name: "do",
  words: ["WHAT", "INPUT.json"],
  mayBeWordless: true,
  summary:
    "Do to the studio what its screens can do, such as prepare-firing or judge-pieces; alone, list what there is.",
  options: { data: { type: "string" }, undo: { type: "string" } },
  optionHelp: {
    data: DATA_OPTION_HELP,
    undo: "take back the newest thing of a scope, such as ware, kilns, load:ID or firing:ID",
  },
  examples: [
    "wareboard do",
    "wareboard do prepare-firing firing.json",
    'echo \'{"id":"f1","at":"2026-11-25T18:00:00.000Z"}\' | wareboard do shut-off -',
    "wareboard do --undo firing:f1",
  ],
  run: async (call): Promise<ExitCode> => {
    const [name, file] = call.words;
    const { undo: scope } = call.options;
    if (typeof scope === "string") {
      const { entry } = await withStudio(call, (store) => undo(store, scope));
      if (call.json) printJson({ entry });
      else printLines([`Taken back: ${entry.summary}.`]);
      return 0;
    }
    if (name === undefined) {
      if (call.json)
        printJson({ commands: [...ALL_COMMANDS.values()].map(({ name: each, schema }) => ({ name: each, schema })) });
      else printLines([...ALL_COMMANDS.keys()]);
      return 0;
    }
    const input = inputOf(file);
    const answer = await withStudio(call, (store) =>
      doCommand(store, name, input, { key: randomUUID(), now: new Date().toISOString(), newId: randomUUID }),
    );
    if (call.json) printJson(answer);
    else printLines([`${answer.entry.summary}.`]);
    return 0;
  },
};

/** The file's JSON, or what is piped in for "-". */
function inputOf(file: string | undefined): unknown {
  if (file === "-") return readJson(readFileSync(0, "utf8"), "-");
  if (file !== undefined) return readJson(readTextFile(file), file);
  throw new BadInput({
    code: "missing-word",
    path: "INPUT.json",
    found: "nothing",
    expected: "a file with what the command needs, or - for what is piped in",
  });
}
