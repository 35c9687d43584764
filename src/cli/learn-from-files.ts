import { calibrate } from "../firing/calibration/calibrate.ts";
import type { Calibration } from "../firing/calibration/calibration.ts";
import { type CalibrationFile, calibrationFile } from "../firing/calibration/calibration-file.ts";
import type { ShelfCone } from "../firing/calibration/evidence.ts";
import { readProgramme } from "../firing/programme/programme.ts";
import { BadInput, shown } from "../measures/bad-input.ts";
import { driftedPriors } from "../studio/firings/learn.ts";
import { plannedFiring } from "../studio/planned-firing.ts";
import { calibrationOption } from "./calibration-option.ts";
import type { CommandCall } from "./command.ts";
import { readJsonFile, readPlanFile, readRequestFile, writeWholeFile } from "./files.ts";
import { readLogFile } from "./log-file.ts";
import { numberOption } from "./options.ts";

/** What one firing's files taught. */
export interface LearnedFromFiles {
  readonly file: CalibrationFile;
  readonly learned: Pick<Calibration, "fit" | "settled" | "misfits" | "before" | "after" | "next" | "parameters">;
  readonly notes: readonly string[];
}

/** Calibrates a kiln by the firing that the call's files tell of, and writes what was learned where it is asked to. */
export function learnFromFiles(call: CommandCall): LearnedFromFiles {
  const [requestPath, planPath, programmePath, logPath] = call.words as [string, string, string, string];
  const request = readRequestFile(requestPath);
  const plan = readPlanFile(planPath, request);
  const programme = readJsonFile(programmePath, readProgramme);
  const { curve } = readLogFile(logPath, call);
  const roomC = numberOption(call, "room", { least: -20, most: 50, otherwise: 20 });
  const earlier = calibrationOption(call);
  const { setting, assumed } = plannedFiring(request, plan, programme.kind, roomC);
  const result = calibrate({
    ...{ kiln: setting.kiln, load: setting.load, programme },
    evidence: [
      {
        log: curve,
        programme: { segments: programme.segments },
        cones: conesOption(call, plan.levels.length),
        ...(call.options.kwh === undefined ? {} : { kWh: kWhOption(call) }),
        ...(call.options["shut-off"] === undefined ? {} : { shutOffMin: shutOffOption(call) }),
      },
    ],
    ...(earlier === undefined ? {} : { priors: driftedPriors(earlier, 1) }),
    ...(setting.probeHeightM === undefined ? {} : { probeHeightM: setting.probeHeightM }),
  });
  const file = calibrationFile(request.kiln.name, result);
  const { out } = call.options;
  if (typeof out === "string") writeWholeFile(out, `${JSON.stringify(file, null, 1)}\n`);
  const { fit, settled, misfits, before, after, next, parameters, notes } = result;
  return { file, learned: { fit, settled, misfits, before, after, next, parameters }, notes: [...notes, ...assumed] };
}

const kWhOption = (call: CommandCall): number => numberOption(call, "kwh", { least: 0.1, most: 1e5, otherwise: 0 });
const shutOffOption = (call: CommandCall): number =>
  numberOption(call, "shut-off", { least: 1, most: 10_000, otherwise: 0 });

/** "1:6:90,2:6:45": level from the floor, cone, degrees from upright. Whether there is such a cone is asked later. */
function conesOption({ options: { cones } }: CommandCall, levels: number): ShelfCone[] {
  if (typeof cones !== "string") return [];
  return cones.split(",").map((text): ShelfCone => {
    const [level, cone, bend, ...more] = text.split(":").map((part) => part.trim());
    const fits = /^\d+$/.test(level ?? "") && Number(level) >= 1 && Number(level) <= levels;
    const bendDeg = bend === undefined || bend === "" ? Number.NaN : Number(bend);
    if (fits && cone && bendDeg >= 0 && bendDeg <= 180 && more.length === 0)
      return { level: Number(level) - 1, cone, bendDeg };
    const expected = `LEVEL:CONE:DEGREES, levels 1 to ${levels}, such as 1:6:45`;
    throw new BadInput({ code: "wrong-option", path: "--cones", found: shown(text), expected });
  });
}
