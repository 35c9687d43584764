import { priorsOf } from "../firing/calibration/calibration-file.ts";
import type { Curve } from "../firing/heat-work/curve.ts";
import { LID_LIFTS_C } from "../firing/prediction/cool-steps.ts";
import { readProgramme } from "../firing/programme/programme.ts";
import type { Fault } from "../firing/watching/fault.ts";
import type { Estimate, Outlook } from "../firing/watching/outlook.ts";
import { type FiringWatch, type WatchState, watchFiring } from "../firing/watching/watch-firing.ts";
import { BadInput } from "../measures/bad-input.ts";
import { formatTemperature, type TemperatureUnits } from "../measures/temperature.ts";
import { coneWanted, plannedFiring } from "../studio/planned-firing.ts";
import { calibrationOption } from "./calibration-option.ts";
import { type Command, type CommandCall, printJson, printLines } from "./command.ts";
import { readJsonFile, readPlanFile, readRequestFile } from "./files.ts";
import { hoursText } from "./hours-text.ts";
import { LOG_OPTION_HELP, LOG_OPTIONS, readLogFile } from "./log-file.ts";
import { choiceOption, numberOption } from "./options.ts";

/** How the firing stood at a moment of the replay. */
interface Look {
  readonly minute: number;
  readonly tempC: number | null;
  readonly wantedC: number | null;
  readonly coneDown: string | null;
  readonly outlook: Pick<Outlook, "ends" | "cone" | "cool" | "finishes"> | null;
}

/** `wareboard watch`: a log watched as it would have been while it came in. */
export const watch: Command = {
  name: "watch",
  words: ["LOG.csv"],
  summary: "Replay a temperature log as it would have been watched: what was noticed and when, how it was to go on.",
  options: {
    request: { type: "string" },
    plan: { type: "string" },
    programme: { type: "string" },
    calibration: { type: "string" },
    every: { type: "string" },
    room: { type: "string" },
    ...LOG_OPTIONS,
    units: { type: "string" },
  },
  optionHelp: {
    request: "the load request (load-request/1)",
    plan: "its plan (load-plan/1)",
    programme: "the programme it was fired by (programme/1); minutes count from the log's first reading",
    calibration: "what the kiln's own firings taught (calibration/1)",
    every: "look how it stands every so many minutes (60)",
    room: "the room's temperature in °C (20)",
    ...LOG_OPTION_HELP,
    units: "C or F, for what is printed (C)",
  },
  examples: [
    "wareboard watch log.csv --programme programme.json --request request.json --plan plan.json",
    "wareboard watch log.csv --programme programme.json --request request.json --plan plan.json --every 15 --json",
  ],
  run: (call) => {
    const units = choiceOption(call, "units", ["C", "F"], "C");
    const everyMin = numberOption(call, "every", { least: 1, most: 10_000, otherwise: 60 });
    const { looks, faults } = replayed(watchOf(call), readLogFile(call.words[0] as string, call).curve, everyMin);
    if (call.json) printJson({ faults, looks });
    else printLines([...faultLines(faults), "", ...looks.map((look) => lookLine(look, units)), "", NEVER_SWITCHES]);
    return faults.length === 0 ? 0 : 1;
  },
};

const NEVER_SWITCHES = "Wareboard watches and advises; it never switches a kiln.";

function watchOf(call: CommandCall): FiringWatch {
  const request = readRequestFile(fileOption(call, "request"));
  const plan = readPlanFile(fileOption(call, "plan"), request);
  const programme = readJsonFile(fileOption(call, "programme"), readProgramme);
  const roomC = numberOption(call, "room", { least: -20, most: 50, otherwise: 20 });
  const calibration = calibrationOption(call);
  const { kiln, load, probeHeightM } = plannedFiring(request, plan, programme.kind, roomC).setting;
  const priors = calibration === undefined ? {} : { priors: priorsOf(calibration) };
  const cone = coneWanted(request, plan, programme) ?? null;
  return watchFiring({ kiln, load, probeHeightM, ...priors }, programme, { startMin: 0, cone });
}

function fileOption({ options }: CommandCall, name: "request" | "plan" | "programme"): string {
  const path = options[name];
  if (typeof path === "string") return path;
  throw new BadInput({ code: "missing-option", path: `--${name}`, found: "nothing", expected: `--${name} FILE.json` });
}

/** Every reading in its turn, the clock between them, and a look now and then. */
function replayed(watching: FiringWatch, { minutes, tempC }: Curve, everyMin: number) {
  const looks: Look[] = [];
  const first = minutes[0] ?? 0;
  let nextLook = everyMin;
  for (let i = 0; i < minutes.length; i++) {
    const minute = (minutes[i] as number) - first;
    watching.silence(minute);
    for (; nextLook <= minute; nextLook += everyMin) looks.push(lookAt(nextLook, watching.state()));
    watching.read(minute, tempC[i] as number);
  }
  const last = watching.state();
  looks.push(lookAt(last.minute ?? 0, last));
  return { looks, faults: last.faults };
}

function lookAt(minute: number, { tempC, wantedC, heatWork, outlook }: WatchState): Look {
  const told = outlook && { ends: outlook.ends, cone: outlook.cone, cool: outlook.cool, finishes: outlook.finishes };
  return { minute, tempC, wantedC, coneDown: heatWork?.coneDown ?? null, outlook: told };
}

function faultLines(faults: readonly Fault[]): string[] {
  if (faults.length === 0) return ["Nothing wrong was noticed."];
  return faults.map(({ kind, sinceMin, noticedMin, untilMin, found, message }) => {
    const until = untilMin === null ? "it lasted to the end" : `over after ${clock(untilMin)}`;
    return `${clock(noticedMin)}  ${kind}: ${found}, since ${clock(sinceMin)}, ${until}. ${message}`;
  });
}

function lookLine({ minute, tempC, wantedC, coneDown, outlook }: Look, units: TemperatureUnits): string {
  const degrees = (celsius: number): string => formatTemperature(celsius, units);
  const wanted = wantedC === null ? "" : ` (${degrees(wantedC)} wanted)`;
  const now = tempC === null ? "no reading" : `${degrees(tempC)}${wanted}`;
  const down = coneDown === null ? "" : `, cone ${coneDown} down at the probe`;
  return `${clock(minute)}  ${now}${down}${outlook === null ? "" : outlookWords(outlook, minute, units)}`;
}

function outlookWords(
  { ends, cone, cool, finishes }: NonNullable<Look["outlook"]>,
  now: number,
  units: TemperatureUnits,
): string {
  const lid = cool.find(({ tempC }) => tempC === LID_LIFTS_C);
  return [
    finishes ? "" : "; it will not reach the programme's end",
    ahead(ends, now, "programme ends"),
    cone === null ? "" : ahead(cone.probe, now, `cone ${cone.cone} down`),
    lid === undefined ? "" : ahead(lid.at, now, `under ${formatTemperature(LID_LIFTS_C, units)}`),
  ].join("");
}

const ahead = (estimate: Estimate | null, now: number, what: string): string =>
  estimate === null || estimate.atMin <= now
    ? ""
    : `; ${what} in ${hoursText((estimate.atMin - now) / 60)} ± ${Math.max(1, Math.round(estimate.spreadMin))} min`;

const clock = (minute: number): string => hoursText(minute / 60);
