import type { ConeName } from "../firing/cones/cone.ts";
import { coneOrNull } from "../firing/cones/cone-or-null.ts";
import { parseCone } from "../firing/cones/parse-cone.ts";
import type { Curve } from "../firing/heat-work/curve.ts";
import { type PredictInput, simulate } from "../firing/prediction/predict.ts";
import { wareCurve } from "../firing/prediction/ware-curve.ts";
import type { Programme } from "../firing/programme/programme.ts";
import type { LoadPlan } from "../loading/load-plan.ts";
import type { LoadRequest } from "../loading/load-request.ts";
import { thermalKiln, thermalLoad } from "./thermal-load.ts";

/** A planned load in its kiln, ready to be fired by any programme, and what was taken for granted. */
export interface PlannedFiring {
  readonly setting: Omit<PredictInput, "programme">;
  readonly assumed: readonly string[];
}

/**
 * Turns a planned load into what the thermal model fires: the plan's levels become the kiln's zones.
 *
 * @param request the request the plan answers
 * @param kind what is fired: raw ware still holds its water
 * @param roomC the room's temperature in °C
 */
export function plannedFiring(
  request: LoadRequest,
  plan: LoadPlan,
  kind: Programme["kind"],
  roomC: number,
): PlannedFiring {
  const { kiln, assumed } = thermalKiln(request, roomC);
  const green = kind === "bisque" || kind === "once-fired";
  const probe = request.kiln.probes[0];
  const notes = [...assumed];
  if (probe === undefined) notes.push("No probe is given: the programme is steered at the middle of the chamber.");
  if (request.ware.some((ware) => ware.massKg === null))
    notes.push("Ware is weighed by its size, its walls taken 6 mm thick.");
  if (green) notes.push("Raw ware is taken bone dry, with 1 % of water left in it.");
  return {
    setting: {
      kiln,
      load: thermalLoad(request, plan, green),
      probeHeightM: probe === undefined ? undefined : probe.heightMm / 1000,
    },
    assumed: notes,
  };
}

/** What the ware of a planned load goes through in its kiln, for any programme: the mean of the levels that hold ware. */
export const wareCurves =
  ({ setting }: PlannedFiring) =>
  (programme: Programme): Curve =>
    wareCurve(simulate({ ...setting, programme }), setting.load);

/**
 * The cone a firing is meant for: the programme's own, else the one that all the loaded ware asks for; undefined where it
 * asks for several or none.
 *
 * @throws BadInput where the programme names a cone that is none
 */
export function coneWanted(request: LoadRequest, plan: LoadPlan, programme: Programme): ConeName | undefined {
  if (programme.cone !== undefined) return parseCone(programme.cone);
  const loaded = new Set(plan.levels.flatMap((level) => level.placements.map((placement) => placement.ware)));
  const cones = request.ware.filter((ware) => loaded.has(ware.name)).map((ware) => coneOrNull(ware.cone));
  const [first] = cones;
  return cones.every((cone) => cone === first) ? (first ?? undefined) : undefined;
}
