import { type Prediction, predict } from "../firing/prediction/predict.ts";
import type { Programme } from "../firing/programme/programme.ts";
import type { LoadPlan } from "../loading/load-plan.ts";
import type { LoadRequest } from "../loading/load-request.ts";
import { thermalKiln, thermalLoad } from "./thermal-load.ts";

/** A prediction for a planned load, and what was taken for granted to make it. */
export interface Foretold {
  readonly prediction: Prediction;
  readonly assumed: readonly string[];
  readonly advice: readonly string[];
}

/**
 * Foretells a planned load's firing: the plan's levels become the kiln's zones, the programme runs at the probe.
 *
 * @param request the request the plan answers
 * @param options the room's temperature in °C
 */
export function foretell(
  request: LoadRequest,
  plan: LoadPlan,
  programme: Programme,
  options: { readonly roomC: number },
): Foretold {
  const { kiln, assumed } = thermalKiln(request, options.roomC);
  const green = programme.kind === "bisque" || programme.kind === "once-fired";
  const load = thermalLoad(request, plan, green);
  const probe = request.kiln.probes[0];
  const prediction = predict({
    kiln,
    load,
    programme,
    probeHeightM: probe === undefined ? undefined : probe.heightMm / 1000,
  });
  const notes = [...assumed];
  if (probe === undefined) notes.push("No probe is given: the programme is steered at the middle of the chamber.");
  if (request.ware.some((ware) => ware.massKg === null))
    notes.push("Ware is weighed by its size, its walls taken 6 mm thick.");
  if (green) notes.push("Raw ware is taken bone dry, with 1 % of water left in it.");
  return { prediction, assumed: notes, advice: [] };
}
