import type { ConeName } from "../../firing/cones/cone.ts";
import type { PredictInput } from "../../firing/prediction/predict.ts";
import type { Programme } from "../../firing/programme/programme.ts";
import { writeProgramme } from "../../firing/programme/write-programme.ts";
import { readLoadPlan } from "../../loading/read-load-plan.ts";
import { readLoadRequest } from "../../loading/read-load-request.ts";
import { BadInput } from "../../measures/bad-input.ts";
import { USUAL_ROOM_C } from "../../studio/firings/foretold-record.ts";
import { coneWanted, plannedFiring } from "../../studio/planned-firing.ts";
import type { FiringRecord } from "../../studio/records/firing-record.ts";
import type { LoadRecord } from "../../studio/records/load-record.ts";

/** What is rehearsed: a load and the programme it is fired by. */
export interface Chosen {
  readonly load: LoadRecord;
  readonly programme: Programme;
  /** Ready to be fired. */
  readonly input: PredictInput;
}

const MAY_BE_FIRED = new Set(["planned", "loading", "loaded"]);
/** Where the ware asks for no one cone. */
const USUAL_CONE: ConeName = "6";

/**
 * Chooses what to rehearse: the planned firing that is to start first, else the first load that is planned.
 *
 * @throws BadInput where there is neither
 */
export function chooseFiring(firings: readonly FiringRecord[], loads: readonly LoadRecord[]): Chosen {
  const isPlaced = (load: LoadRecord | undefined): load is LoadRecord => load !== undefined && load.plan !== null;
  const loadOf = (id: string | null): LoadRecord | undefined => loads.find((load) => load.id === id);
  const start = (firing: FiringRecord): string => firing.plannedStartAt ?? "~";
  const planned = firings
    .filter(({ state, programme, loadId }) => state === "planned" && programme !== null && isPlaced(loadOf(loadId)))
    .toSorted((a, b) => (start(a) < start(b) ? -1 : 1))[0];
  if (planned !== undefined) return chosen(loadOf(planned.loadId) as LoadRecord, planned.programme as Programme);
  const load = loads.find((each) => MAY_BE_FIRED.has(each.state) && isPlaced(each));
  if (load !== undefined) return chosen(load, null);
  throw new BadInput({
    code: "nothing-to-rehearse",
    path: "--data",
    found: "a studio without a planned load",
    expected: "one load whose pieces have places; or no --data, for the demo's",
  });
}

function chosen(load: LoadRecord, wished: Programme | null): Chosen {
  const request = readLoadRequest(load.request);
  const plan = readLoadPlan(load.plan, request);
  const programme = wished ?? usualProgramme(coneWanted(request, plan, NO_CONE) ?? USUAL_CONE);
  const { setting } = plannedFiring(request, plan, programme.kind, USUAL_ROOM_C);
  return { load, programme, input: { ...setting, programme } };
}

const NO_CONE: Programme = { format: "programme/1", name: "none yet", segments: [] };

/** Cones with a nought in front are bisque's; common practice, no source. */
const usualProgramme = (cone: ConeName): Programme =>
  writeProgramme({ cone, kind: cone.startsWith("0") ? "bisque" : "glaze", pace: "medium" }).programme;
