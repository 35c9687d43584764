import type { CalibrationRecord } from "../../records/calibration-record.ts";
import type { FiringRecord } from "../../records/firing-record.ts";
import type { KilnRecord } from "../../records/kiln-record.ts";
import type { LoadRecord } from "../../records/load-record.ts";
import type { ReadingSeries } from "../../records/reading.ts";
import type { StudioStore } from "../../records/store.ts";
import type { StudioSettings } from "../../records/studio-settings.ts";
import type { UpkeepRecord } from "../../records/upkeep-record.ts";
import type { WareRecord } from "../../records/ware-record.ts";

/** What a studio has kept of its year. Firings and calibrations in their order. */
export interface KeptYear {
  readonly settings: StudioSettings;
  readonly kiln: KilnRecord;
  readonly firings: readonly FiringRecord[];
  readonly loads: readonly LoadRecord[];
  readonly ware: readonly WareRecord[];
  readonly upkeep: readonly UpkeepRecord[];
  readonly calibrations: readonly CalibrationRecord[];
  readonly readings: ReadonlyMap<string, readonly ReadingSeries[]>;
}

export const keptYear = (store: StudioStore): Promise<KeptYear> =>
  store.read(async (records) => {
    const [kiln] = await records.kilns.list();
    if (kiln === undefined) throw new Error("The invented studio has no kiln.");
    const firings = await records.firings.list();
    const readings = new Map<string, readonly ReadingSeries[]>();
    for (const { id } of firings) readings.set(id, await records.readings.of(id));
    return {
      ...{ settings: await records.settings.get(), kiln, firings, readings },
      loads: await records.loads.list(),
      ware: await records.ware.list(),
      upkeep: await records.upkeep.list(),
      calibrations: await records.calibrations.list(),
    };
  });
