import type { CalibrationRecord } from "../records/calibration-record.ts";

/** The calibration to begin from: the newest that rests on none of these firings, so that none is counted twice. */
export function earlierCalibration(
  calibrations: readonly CalibrationRecord[],
  kilnId: string,
  firingIds: readonly string[],
): CalibrationRecord | null {
  const given = new Set(firingIds);
  const inOrder = calibrations.filter((each) => each.kilnId === kilnId).sort((a, b) => (a.at < b.at ? -1 : 1));
  // A calibration began from the one before it: one that rests on a given firing spoils all after it.
  const spoilt = inOrder.findIndex(({ firingIds: ids }) => ids.some((id) => given.has(id)));
  return (spoilt < 0 ? inOrder : inOrder.slice(0, spoilt)).at(-1) ?? null;
}
