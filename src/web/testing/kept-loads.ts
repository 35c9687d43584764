import { checkPlan } from "../../loading/checker/check-plan.ts";
import type { LoadPlan, Placement } from "../../loading/load-plan.ts";
import { readLoadPlan } from "../../loading/read-load-plan.ts";
import { readLoadRequest } from "../../loading/read-load-request.ts";
import type { LoadRecord } from "../../studio/records/load-record.ts";

/** A load as the studio keeps it, asked for past the browser. */
export async function keptLoad(address: string, id: string): Promise<LoadRecord> {
  const answer = await fetch(`${address}/api/loads/${id}`);
  return (await answer.json()) as LoadRecord;
}

/** Its plan, read. */
export async function keptPlan(address: string, id: string): Promise<LoadPlan> {
  const load = await keptLoad(address, id);
  return readLoadPlan(load.plan, readLoadRequest(load.request));
}

/** The load once its planning is over and kept. */
export async function plannedLoad(address: string, id: string): Promise<LoadRecord> {
  for (let tries = 0; tries < 150; tries++) {
    const load = await keptLoad(address, id);
    if (load.plan !== null && load.plan !== undefined) return load;
    await new Promise((resolve) => setTimeout(resolve, 200));
  }
  throw new Error("The load was not planned in half a minute.");
}

/** How many rules the kept plan breaks, by the checker and not by the screen. */
export async function keptBroken(address: string, id: string): Promise<number> {
  const load = await keptLoad(address, id);
  const request = readLoadRequest(load.request);
  return checkPlan(request, readLoadPlan(load.plan, request)).length;
}

/** What stands at a place ("1.4": the second level, its fifth piece). */
export function placementAt(plan: LoadPlan, key: string): Placement {
  const [level = 0, placement = 0] = key.split(".").map(Number);
  const found = plan.levels[level]?.placements[placement];
  if (!found) throw new Error(`Nothing stands at ${key}.`);
  return found;
}

export const piecesIn = (plan: LoadPlan): number =>
  plan.levels.reduce((sum, { placements }) => sum + placements.length, 0);
