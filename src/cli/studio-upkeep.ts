import { type UpkeepDue, upkeepDue } from "../studio/firings/upkeep-due.ts";
import { type Command, type ExitCode, printJson, printLines } from "./command.ts";
import { DATA_OPTION_HELP, withStudio } from "./studio-folder.ts";

/** `wareboard upkeep`: how long each kiln's parts have served, and what should be seen to. */
export const upkeep: Command = {
  name: "upkeep",
  words: [],
  summary: "How long each kiln's parts have served, how its elements wear, and what should be seen to.",
  options: { data: { type: "string" } },
  optionHelp: { data: DATA_OPTION_HELP },
  examples: ["wareboard upkeep", "wareboard upkeep --data ~/pots --json"],
  run: async (call): Promise<ExitCode> => {
    const kilns = await withStudio(call, (store) =>
      store.read(async (records) => {
        const [book, firings] = [await records.upkeep.list(), await records.firings.list()];
        return (await records.kilns.list()).map((kiln) => ({
          kiln: kiln.kiln.name,
          due: upkeepDue(kiln, book, firings),
        }));
      }),
    );
    if (call.json) printJson({ kilns });
    else if (kilns.length === 0) printLines(["No kiln is kept yet."]);
    else {
      printLines([
        ...kilns.flatMap(({ kiln, due }) => linesOf(kiln, due)),
        "",
        "Switch the kiln off at its isolator before touching anything electrical; its manual and an electrician go first.",
      ]);
    }
    return 0;
  },
};

function linesOf(kiln: string, { all, elements, probe, relay, shelves, reminders }: UpkeepDue): string[] {
  const left = elements.wear.remainingFirings;
  const expected =
    left === null
      ? "not measured often enough to tell what is left"
      : `about ${Math.round(left.expected)} firings left`;
  return [
    `${kiln}: ${all.firings} firings, ${Math.round(all.hours)} hours of heating`,
    `    elements ${elements.firings} firings, ${expected}; probe ${probe.firings}, relays ${relay.firings} firings`,
    `    shelves: ${shelves.firingsSinceWash} firings since washed, ${shelves.firingsSinceTurn} since turned, ${shelves.cracked} cracked`,
    ...reminders.map(({ when, what, because }) => `    ${when}: ${what} (${because})`),
  ];
}
