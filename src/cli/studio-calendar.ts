import { calendarEntry } from "../studio/firings/calendar-entry.ts";
import { type Command, type ExitCode, printJson, printLines } from "./command.ts";
import { writeWholeFile } from "./files.ts";
import { keptFiring } from "./kept-firing.ts";
import { DATA_OPTION_HELP, withStudio } from "./studio-folder.ts";

/** `wareboard calendar`: a prepared firing for her calendar. */
export const calendar: Command = {
  name: "calendar",
  words: ["FIRING"],
  summary: "Write a prepared firing as a calendar entry (iCalendar): start, when to look, earliest opening.",
  options: { data: { type: "string" }, out: { type: "string" } },
  optionHelp: { data: DATA_OPTION_HELP, out: "the file to write (firing.ics)" },
  examples: ["wareboard calendar f1 --out glaze.ics"],
  run: async (call): Promise<ExitCode> => {
    const [wanted] = call.words;
    const out = typeof call.options.out === "string" ? call.options.out : "firing.ics";
    const text = await withStudio(call, (store) =>
      store.read(async (records) => {
        const firing = await keptFiring(records, wanted);
        return calendarEntry(firing, new Date().toISOString(), (await records.settings.get()).studioName);
      }),
    );
    writeWholeFile(out, text);
    if (call.json) printJson({ file: out });
    else printLines([`Written to ${out}.`]);
    return 0;
  },
};
