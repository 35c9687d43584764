import { FIRING_KINDS } from "../firing/cones/firing-kind.ts";
import { parseCone } from "../firing/cones/parse-cone.ts";
import { simulate } from "../firing/prediction/predict.ts";
import { troubleText } from "../firing/prediction/trouble-text.ts";
import { usualKilnCurve } from "../firing/prediction/usual-kiln.ts";
import { ENDINGS } from "../firing/programme/draft-programme.ts";
import { programmeHours } from "../firing/programme/ideal-curve.ts";
import { keyInTable } from "../firing/programme/key-in.ts";
import { DRYNESSES, PACES } from "../firing/programme/pace.ts";
import { type ProgrammeWish, type WrittenProgramme, writeProgramme } from "../firing/programme/write-programme.ts";
import { BadInput } from "../measures/bad-input.ts";
import { parseLengthMm } from "../measures/length.ts";
import { type PlannedFiring, plannedFiring, wareCurves } from "../studio/planned-firing.ts";
import { type Command, type CommandCall, printJson, printLines } from "./command.ts";
import { readPlanFile, readRequestFile, writeWholeFile } from "./files.ts";
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
    request: { type: "string" },
    plan: { type: "string" },
    room: { type: "string" },
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
    request: "a load request, with --plan: reach the cone in this kiln with this load, at the ware's mean level",
    plan: "the load plan that answers --request",
    room: "with --request: the room's temperature in °C (20)",
  },
  examples: [
    "wareboard programme --cone 6 --kind glaze --pace medium --hold 10",
    "wareboard programme --cone 04 --kind bisque --pace slow --units F --out bisque.json",
    "wareboard programme --cone 6 --request request.json --plan plan.json --out programme.json",
  ],
  run: (call) => {
    const wish = wishOf(call);
    const firing = firingOf(call, wish.kind);
    const units = choiceOption(call, "units", ["C", "F"], "C");
    let written: WrittenProgramme;
    try {
      written = writeProgramme({ ...wish, simulate: firing === null ? usualKilnCurve : wareCurves(firing) });
    } catch (error) {
      if (!(error instanceof BadInput) || error.code !== "never-reaches" || firing === null) throw error;
      return tooWeak(call, error);
    }
    const out = call.options.out;
    if (typeof out === "string") writeWholeFile(out, `${JSON.stringify(written.programme, null, 1)}\n`);
    if (call.json) printJson(written.programme);
    else printLines(programmeText(written, firing, units));
    return 0;
  },
};

/** The load in its kiln that the programme is to fire, or null for a usual small kiln. */
function firingOf(call: CommandCall, kind: ProgrammeWish["kind"]): PlannedFiring | null {
  const { request: requestPath, plan: planPath } = call.options;
  if (typeof requestPath !== "string" || typeof planPath !== "string") {
    if (requestPath === undefined && planPath === undefined && call.options.room === undefined) return null;
    const missing = typeof requestPath === "string" ? "--plan" : "--request";
    throw new BadInput({
      code: "missing-option",
      path: missing,
      found: "nothing",
      expected: "both --request and --plan, to aim in this kiln with this load; or neither",
    });
  }
  const request = readRequestFile(requestPath);
  const roomC = numberOption(call, "room", { least: -20, most: 50, otherwise: 20 });
  return plannedFiring(request, readPlanFile(planPath, request), kind, roomC);
}

/** The answer is no: the input is sound, and the kiln does not get there. */
function tooWeak(call: CommandCall, error: BadInput): 1 {
  const message = `No programme of this pace does it with this load: ${error.found}. It would take ${error.expected}.`;
  if (call.json) printJson({ reaches: false, message });
  else printLines([message]);
  return 1;
}

function wishOf(call: CommandCall): ProgrammeWish {
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

function programmeText(written: WrittenProgramme, firing: PlannedFiring | null, units: "C" | "F"): string[] {
  const rows = keyInTable(written.programme, units).map((line) => {
    const rate = line.rate === null ? "full power" : `${line.rate} °${units}/h`;
    const hold = line.holdMin > 0 ? `hold ${line.holdMin} min` : "";
    return `  ${String(line.segment).padStart(2)}  ${rate.padEnd(11)} to ${`${line.target} °${units}`.padEnd(8)} ${hold.padEnd(13)} ${line.reason || line.stage}`;
  });
  const run = runOf(written, firing);
  const notes = [
    ...run.troubles,
    ...written.notes.map((note) => `Note: ${note}`),
    ...(firing?.assumed.map((each) => `Taken for granted: ${each}`) ?? []),
  ];
  return [
    run.headline,
    "",
    ...rows,
    ...(notes.length ? [""] : []),
    ...notes.map((note) => `  ${note}`),
    "",
    "  Check it against your kiln's own manual. Witness cones have the last word.",
  ];
}

/** How long it takes and what the cone gets, in a usual small kiln or in hers; and where hers falls behind. */
function runOf(
  { programme, work }: WrittenProgramme,
  firing: PlannedFiring | null,
): { headline: string; troubles: string[] } {
  const done = `work ${work.toFixed(2)} of the cone, its cooling counted`;
  if (firing === null) {
    const hours = hoursText(programmeHours(programme).programmed);
    return {
      headline: `${programme.name}: ${hours} to shut-off where the kiln can follow; ${done}, as a usual small kiln cools.`,
      troubles: [],
    };
  }
  const { shutOffMin, trouble } = simulate({ ...firing.setting, programme });
  return {
    headline: `${programme.name}: ${hoursText(shutOffMin / 60)} to shut-off in this kiln with this load; ${done}, at the mean of the levels that hold ware.`,
    troubles: trouble.map((each) => `Careful: ${troubleText(each, programme)}`),
  };
}

const hoursText = (hours: number): string =>
  `${Math.floor(hours)} h ${String(Math.round((hours % 1) * 60)).padStart(2, "0")} min`;
