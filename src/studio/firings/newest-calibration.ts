import { valuesOf } from "../../firing/calibration/calibration-file.ts";
import { AT_REST, withValues } from "../../firing/calibration/parameters.ts";
import type { PredictInput } from "../../firing/prediction/predict.ts";
import type { CalibrationRecord } from "../records/calibration-record.ts";

/** What is known of a kiln now: its newest calibration, or null. Of two of one moment the later in the list. */
export function newestCalibration(
  calibrations: readonly CalibrationRecord[],
  kilnId: string,
): CalibrationRecord | null {
  let newest: CalibrationRecord | null = null;
  for (const each of calibrations) {
    if (each.kilnId === kilnId && (newest === null || each.at >= newest.at)) newest = each;
  }
  return newest;
}

type Setting = Omit<PredictInput, "programme">;

/** A planned firing's setting with what a calibration learned put in; as described where there is none. */
export function calibratedSetting(setting: Setting, record: Pick<CalibrationRecord, "calibration"> | null): Setting {
  if (record === null) return setting;
  const { values } = valuesOf(record.calibration);
  const { kiln, load, probeOffsetC } = withValues(setting.kiln, setting.load, { ...AT_REST, ...values });
  return { ...setting, kiln, load, probeOffsetC: (setting.probeOffsetC ?? 0) + probeOffsetC };
}
