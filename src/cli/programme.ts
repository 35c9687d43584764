import { FIRING_KINDS } from "../firing/cones/firing-kind.ts";
import { parseCone } from "../firing/cones/parse-cone.ts";
import { ENDINGS } from "../firing/programme/draft-programme.ts";
import { programmeHours } from "../firing/programme/ideal-curve.ts";
import { keyInTable } from "../firing/programme/key-in.ts";
import { DRYNESSES, PACES } from "../firing/programme/pace.ts";
import { type WrittenProgramme, writeProgramme } from "../firing/programme/write-programme.ts";
import { BadInput } from "../measures/bad-input.ts";
import { parseLengthMm } from "../measures/length.ts";
import { type Command, type CommandCall, printJson, printLines } from "./command.ts";
import { writeWholeFile } from "./files.ts";
import { choiceOption, numberOption } from "./options.ts";

/** `wareboard programme`: write a firing programme that reaches a cone. */
export const programme: Command = {
  name: "programme",
  words: [],
  summary: "Write a firing programme that reaches a cone, each segment with its reason.",
  options: {
    cone: { type: "string" },
    kind: { type: "string" },
    pace: { type: "string" },
    hold: { type: "string" },
    thickness: { type: "string" },
    dryness: { type: "string" },
    ending: { type: "string" },
    segments: { type: "string" },
    units: { type: "string" },
    out: { type: "string" },
  },
  optionHelp: {
    cone: "the cone to reach, such as 6 or 04",
    kind: "glaze, bisque, once-fired or lustre (glaze)",
    pace: "slow, medium or fast (medium)",
    hold: "minutes to hold at the top",
    thickness: "the thickest wall, such as 8 mm or 3/8 in",
    dryness: "bone-dry, dry-to-touch or damp, for raw ware",
    ending: "natural, drop-and-hold or slow-cool (natural)",
    segments: "the most segments the controller takes",
    units: "C or F, for the table to key in (C)",
    out: "write the programme (programme/1) to this file",
  },
  examples: [
    "wareboard programme --cone 6 --kind glaze --pace medium --hold 10",
    "wareboard programme --cone 04 --kind bisque --pace slow --units F --out bisque.json",
  ],
  run: (call) => {
    const written = writeProgramme(wishOf(call));
    const out = call.options.out;
    if (typeof out === "string") writeWholeFile(out, `${JSON.stringify(written.programme, null, 1)}\n`);
    if (call.json) printJson(written.programme);
    else printLines(programmeText(written, choiceOption(call, "units", ["C", "F"], "C")));
    return 0;
  },
};

function wishOf(call: CommandCall): Parameters<typeof writeProgramme>[0] {
  const { cone, thickness, hold, segments } = call.options;
  if (typeof cone !== "string") {
    throw new BadInput({
      code: "missing-option",
      path: "--cone",
      found: "nothing",
      expected: "the cone to reach, such as --cone 6",
    });
  }
  return {
    cone: parseCone(cone, "--cone"),
    kind: choiceOption(call, "kind", FIRING_KINDS, "glaze"),
    pace: choiceOption(call, "pace", PACES, "medium"),
    holdMin: hold === undefined ? undefined : numberOption(call, "hold", { least: 0, most: 600, otherwise: 0 }),
    thicknessMm: typeof thickness === "string" ? parseLengthMm(thickness, "mm", "--thickness") : undefined,
    dryness: call.options.dryness === undefined ? undefined : choiceOption(call, "dryness", DRYNESSES, "bone-dry"),
    ending: choiceOption(call, "ending", ENDINGS, "natural"),
    mostSegments:
      segments === undefined
        ? undefined
        : numberOption(call, "segments", { least: 1, most: 100, whole: true, otherwise: 100 }),
  };
}

function programmeText(written: WrittenProgramme, units: "C" | "F"): string[] {
  const rows = keyInTable(written.programme, units).map((line) => {
    const rate = line.rate === null ? "full power" : `${line.rate} °${units}/h`;
    const hold = line.holdMin > 0 ? `hold ${line.holdMin} min` : "";
    return `  ${String(line.segment).padStart(2)}  ${rate.padEnd(11)} to ${`${line.target} °${units}`.padEnd(8)} ${hold.padEnd(13)} ${line.reason || line.stage}`;
  });
  const hours = programmeHours(written.programme);
  return [
    `${written.programme.name}: ${hoursText(hours.programmed)} to shut-off where the kiln can follow; work ${written.work.toFixed(2)} of the cone, its cooling counted.`,
    "",
    ...rows,
    ...(written.notes.length ? ["", ...written.notes.map((note) => `  Note: ${note}`)] : []),
    "",
    "  Check it against your kiln's own manual. Witness cones have the last word.",
  ];
}

const hoursText = (hours: number): string =>
  `${Math.floor(hours)} h ${String(Math.round((hours % 1) * 60)).padStart(2, "0")} min`;
