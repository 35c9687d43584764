import { type CalibrationFile, readCalibration } from "../firing/calibration/calibration-file.ts";
import type { CommandCall } from "./command.ts";
import { readJsonFile } from "./files.ts";

/** The option `--calibration FILE`. @throws BadInput where it is no calibration */
export function calibrationOption(call: CommandCall): CalibrationFile | undefined {
  const path = call.options.calibration;
  return typeof path === "string" ? readJsonFile(path, readCalibration) : undefined;
}
