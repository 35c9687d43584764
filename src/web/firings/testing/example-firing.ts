import { curveThrough } from "../../../firing/heat-work/curve.ts";
import { heatWork } from "../../../firing/heat-work/heat-work.ts";
import type { Prediction } from "../../../firing/prediction/predict.ts";
import type { FiringRecord } from "../../../studio/records/firing-record.ts";

const MADE_AT = "2026-11-01T09:00:00.000Z";

/** An invented firing that is being prepared. */
export const firing = (id: string, change: Partial<FiringRecord> = {}): FiringRecord => ({
  ...{ id, kilnId: "k1", loadId: null, name: id, state: "planned", programme: null },
  ...{ startedAt: null, endedAt: null, meterReadings: [], createdAt: MADE_AT, changedAt: MADE_AT },
  ...change,
});

/**
 * An invented prediction: ten hours up at 2 kW, so 20 kWh, and so many more until the lid may be lifted.
 *
 * @param lidHours null where it takes over a week
 */
export function prediction(lidHours: number | null = 10): Prediction {
  const { minutes, tempC } = curveThrough([
    [0, 20],
    [300, 620],
    [600, 1222],
    [1200, 90],
  ]);
  const watts = Float64Array.of(0, 2000, 2000, 0);
  return {
    ...{ hours: 10, kWh: 20, peakC: 1222, levels: [], curve: [], energyResidual: 0, troubles: [], warnings: [] },
    coolHours: { "200": 6, "120": 8, "95": lidHours, "50": null },
    probe: heatWork({ minutes, tempC }),
    finished: true,
    firing: {
      ...{ minutes, probeC: tempC, wantedC: tempC, watts, levelC: [], shutOffMin: 600, kWh: 20, peakC: 1222 },
      ...{ energyResidual: 0, trouble: [], steps: 4 },
    },
  };
}
