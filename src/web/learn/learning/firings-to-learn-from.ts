import type { CalibrationRecord } from "../../../studio/records/calibration-record.ts";
import type { FiringRecord } from "../../../studio/records/firing-record.ts";
import type { LoadRecord } from "../../../studio/records/load-record.ts";

/** A kiln's firings that may teach something, the newest first. Whether temperatures were read shows when it is tried. */
export interface ToLearnFrom {
  /** Nothing was learned from these yet. */
  readonly fresh: readonly FiringRecord[];
  /** From these it was. */
  readonly learned: readonly FiringRecord[];
  /** Why the newest one that is over cannot teach; null where it can, or there is none. */
  readonly lastCannot: string | null;
}

export function firingsToLearnFrom(
  firings: readonly FiringRecord[],
  loads: readonly LoadRecord[],
  calibrations: readonly CalibrationRecord[],
): ToLearnFrom {
  const planned = new Set(loads.filter(({ plan }) => plan !== null).map(({ id }) => id));
  const known = new Set(calibrations.flatMap(({ firingIds }) => firingIds));
  const over = firings
    .filter(({ state, startedAt }) => startedAt !== null && state !== "planned" && state !== "firing")
    .sort((a, b) => ((a.startedAt ?? "") < (b.startedAt ?? "") ? 1 : -1));
  const cannot = (firing: FiringRecord): string | null => {
    if (firing.loadId === null || !planned.has(firing.loadId)) return `${firing.name} has no planned load.`;
    if (firing.programme === null) return `${firing.name} has no programme.`;
    return null;
  };
  const able = over.filter((firing) => cannot(firing) === null);
  return {
    fresh: able.filter(({ id }) => !known.has(id)),
    learned: able.filter(({ id }) => known.has(id)),
    lastCannot: over[0] === undefined ? null : cannot(over[0]),
  };
}
