import { BadInput } from "../measures/bad-input.ts";
import { type Command, type CommandCall, type ExitCode, printJson, printLines } from "./command.ts";
import { learnFromFiles } from "./learn-from-files.ts";
import { learnFromStudio } from "./learn-from-studio.ts";
import { LOG_OPTION_HELP, LOG_OPTIONS } from "./log-file.ts";
import { DATA_OPTION_HELP } from "./studio-folder.ts";

const OF_FILES = ["out", "kwh", "cones", "shut-off", "calibration", "room"] as const;
const OF_STUDIO = ["kiln", "data"] as const;

/** `wareboard learn`: what a kiln's own firings teach about it. */
export const learn: Command = {
  name: "learn",
  words: ["REQUEST.json", "PLAN.json", "PROGRAMME.json", "LOG.csv"],
  mayBeWordless: true,
  summary: "Learn how a kiln really fires: from one firing's files, or from all firings a studio has not learned from.",
  options: {
    kiln: { type: "string" },
    data: { type: "string" },
    out: { type: "string" },
    kwh: { type: "string" },
    cones: { type: "string" },
    "shut-off": { type: "string" },
    calibration: { type: "string" },
    room: { type: "string" },
    ...LOG_OPTIONS,
  },
  optionHelp: {
    kiln: "without files: the kiln's name; each of its firings that nothing was learned from yet teaches",
    data: DATA_OPTION_HELP,
    out: "with files: where what was learned is written (calibration/1)",
    kwh: "what the meter ran during the firing",
    cones: "witness cones as seen, LEVEL:CONE:DEGREES from upright, levels from the floor: 1:6:90,2:6:45",
    "shut-off": "minutes from the log's first reading until the elements went off for good (its peak)",
    calibration: "what earlier firings taught, to begin from",
    room: "the room's temperature in °C (20)",
    ...LOG_OPTION_HELP,
  },
  examples: [
    'wareboard learn --kiln "back room" --data ~/pots',
    "wareboard learn request.json plan.json programme.json log.csv --kwh 33.8 --cones 1:6:45,2:6:80 --out calibration.json",
  ],
  run: (call): Promise<ExitCode> | ExitCode => {
    const ofFiles = call.words.length > 0;
    const stray = (ofFiles ? OF_STUDIO : OF_FILES).find((each) => call.options[each] !== undefined);
    if (stray !== undefined) throw strayOption(stray, ofFiles);
    if (!ofFiles) return learnFromStudio(call);
    const { file, learned, notes } = learnFromFiles(call);
    if (call.json) printJson({ calibration: file, ...learned, notes });
    else printLines([...notes.map((note) => `  ${note}`), ...writtenTo(call)]);
    return 0;
  },
};

const writtenTo = ({ options: { out } }: CommandCall): string[] =>
  typeof out === "string" ? ["", `  Foretell with it: wareboard predict … --calibration ${out}`] : [];

const strayOption = (option: string, ofFiles: boolean): BadInput =>
  new BadInput({
    code: "wrong-option",
    path: `--${option}`,
    found: ofFiles ? "a studio's option beside files" : "an option for files, and no file",
    expected: ofFiles ? "files alone, or --kiln NAME without files" : "REQUEST.json PLAN.json PROGRAMME.json LOG.csv",
  });
