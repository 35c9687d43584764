import type { ConeName } from "../../firing/cones/cone.ts";
import type { FiringKind } from "../../firing/cones/firing-kind.ts";
import type { Pace } from "../../firing/programme/pace.ts";
import type { ProgrammeFile } from "../../firing/programme/programme.ts";
import { writeProgramme } from "../../firing/programme/write-programme.ts";
import type { FiringRecord } from "../records/firing-record.ts";
import type { DemoTime } from "./demo-time.ts";

type DemoFiringName = "bisque" | "glaze" | "trial";

/** The demo's past firings, by the word its notes know them by. */
export function demoFirings(
  ids: { readonly big: string; readonly small: string; readonly trialLoad: string },
  time: DemoTime,
  newId: () => string,
): Record<DemoFiringName, FiringRecord> {
  const firing = (
    name: string,
    kilnId: string,
    loadId: string | null,
    [cone, kind, pace]: readonly [ConeName, FiringKind, Pace],
    [daysAgo, hours, meterKWh, usedKWh]: readonly [number, number, number, number],
  ): FiringRecord => {
    const [startedAt, endedAt] = [time.ago(daysAgo), time.ago(daysAgo, -hours * 60)];
    return {
      ...{ id: newId(), kilnId, loadId, name, state: "finished", startedAt, endedAt },
      programme: JSON.parse(JSON.stringify(writeProgramme({ cone, kind, pace }).programme)) as ProgrammeFile,
      meterReadings: [
        { at: startedAt, kWh: meterKWh },
        { at: endedAt, kWh: meterKWh + usedKWh },
      ],
      ...{ createdAt: startedAt, changedAt: endedAt },
    };
  };
  return {
    bisque: firing("bisque, full to the lid", ids.big, null, ["05", "bisque", "slow"], [23, 13.5, 4127.2, 34.6]),
    glaze: firing("glaze, cone 6", ids.big, null, ["6", "glaze", "medium"], [17, 10.2, 4174.9, 41.3]),
    trial: firing("tide and slate, trial", ids.small, ids.trialLoad, ["6", "glaze", "fast"], [13, 6.4, 4229.5, 12.1]),
  };
}
