import type { LoadPlan } from "../../loading/load-plan.ts";
import type { LoadRequest } from "../../loading/load-request.ts";
import { readLoadPlan } from "../../loading/read-load-plan.ts";
import { readLoadRequest } from "../../loading/read-load-request.ts";
import type { LoadRecord } from "../../studio/records/load-record.ts";

/** A load's request and plan with nothing left out, as the drawings and the figures take them. */
export interface WholeLoad {
  readonly request: LoadRequest;
  readonly plan: LoadPlan | null;
}

const read = new WeakMap<LoadRecord, WholeLoad>();

/**
 * Reads a load's request and plan, once for each state of the record.
 *
 * @throws BadInput where the record came damaged
 */
export function wholeLoad(load: LoadRecord): WholeLoad {
  const known = read.get(load);
  if (known) return known;
  const request = readLoadRequest(load.request);
  const whole = { request, plan: load.plan && readLoadPlan(load.plan, request) };
  read.set(load, whole);
  return whole;
}
