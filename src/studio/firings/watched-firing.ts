import { priorsOf } from "../../firing/calibration/calibration-file.ts";
import type { ConeName } from "../../firing/cones/cone.ts";
import type { Programme } from "../../firing/programme/programme.ts";
import type { ThermalKiln, ThermalLoad } from "../../firing/thermal/kiln-network.ts";
import type { WatchedKiln } from "../../firing/watching/kiln-bank.ts";
import { LOAD_REQUEST_FORMAT } from "../../loading/load-request.ts";
import { readLoadPlan } from "../../loading/read-load-plan.ts";
import { readLoadRequest } from "../../loading/read-load-request.ts";
import { coneWanted, plannedFiring } from "../planned-firing.ts";
import type { CalibrationRecord } from "../records/calibration-record.ts";
import type { FiringRecord } from "../records/firing-record.ts";
import type { KilnRecord } from "../records/kiln-record.ts";
import type { LoadRecord } from "../records/load-record.ts";
import { thermalKiln } from "../thermal-load.ts";
import { USUAL_ROOM_C } from "./foretold-record.ts";

/** What a firing is watched from. */
export interface WatchedRecords {
  readonly firing: FiringRecord;
  readonly kiln: KilnRecord;
  readonly load: LoadRecord | null;
  /** The newest of its kiln; null as the kiln is described. */
  readonly calibration: CalibrationRecord | null;
}

/** Everything that `watchFiring` asks for. */
export interface WatchedFiring {
  readonly watched: WatchedKiln;
  readonly programme: Programme;
  readonly cone: ConeName | null;
  readonly assumed: readonly string[];
}

// What stands in a kiln of which nobody said what stands in it: 12 kg in 57 litres, on three shelves that leave a fifth of the
// chamber open. Common practice, no source.
const USUAL = { wareKgPerM3: 12 / 0.057, levels: 3, shelfShare: 0.8, shelfM: 0.016, wareM: 0.006, postsKg: 0.6 };

/**
 * A firing's kiln as it is known now, its load and its programme, ready to be watched.
 *
 * @returns null where it has no programme: then nobody can say whether its readings are as they should be
 */
export function watchedFiring({ firing, kiln, load, calibration }: WatchedRecords): WatchedFiring | null {
  if (firing.programme === null) return null;
  const programme = firing.programme as Programme;
  const priors = calibration === null ? {} : { priors: priorsOf(calibration.calibration) };
  if (load !== null && load.plan !== null) {
    const request = readLoadRequest(load.request);
    const plan = readLoadPlan(load.plan, request);
    const { setting, assumed } = plannedFiring(request, plan, programme.kind, USUAL_ROOM_C);
    const { kiln: thermal, load: of, probeHeightM } = setting;
    const watched = { kiln: thermal, load: of, probeHeightM, ...priors };
    return { watched, programme, cone: coneWanted(request, plan, programme) ?? null, assumed };
  }
  const { kiln: described, furniture, rules } = kiln;
  const request = readLoadRequest({ format: LOAD_REQUEST_FORMAT, kiln: described, furniture, rules, ware: [] });
  const { kiln: thermal, assumed } = thermalKiln(request, USUAL_ROOM_C);
  const probe = request.kiln.probes[0];
  const probeHeightM = probe === undefined ? undefined : probe.heightMm / 1000;
  const usual = usualLoad(thermal, programme.kind === "bisque" || programme.kind === "once-fired");
  const watched = { kiln: thermal, load: usual.load, probeHeightM, ...priors };
  const cone = coneWanted(request, NOTHING_PLANNED, programme) ?? null;
  return { watched, programme, cone, assumed: [...assumed, usual.assumed] };
}

const NOTHING_PLANNED = { format: "load-plan/1", levels: [], left: [], figures: {} } as const;

function usualLoad({ floorAreaM2, depthM }: ThermalKiln, green: boolean): { load: ThermalLoad; assumed: string } {
  const wareKg = USUAL.wareKgPerM3 * floorAreaM2 * depthM;
  const levels = Array.from({ length: USUAL.levels }, (_, i) => ({
    shelfTopM: 0.04 + (i * depthM) / USUAL.levels,
    shelfThicknessM: USUAL.shelfM,
    shelfAreaM2: floorAreaM2 * USUAL.shelfShare,
    openAreaM2: floorAreaM2 * (1 - USUAL.shelfShare),
    wareKg: wareKg / USUAL.levels,
    wareThicknessM: USUAL.wareM,
    postsKg: USUAL.postsKg,
  }));
  const assumed = `No planned load: ${Math.round(wareKg)} kg of ware on ${USUAL.levels} shelves is taken to stand in it.`;
  return { load: { levels, green, massFactor: 1 }, assumed };
}
