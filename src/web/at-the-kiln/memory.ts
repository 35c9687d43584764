import { type AtTheKiln, nothingDone } from "./ticks.ts";
import type { PlanLevels } from "./walk.ts";

// What this device remembers of each load at the kiln. Kept at once, in a place that needs no network and no waiting.

const keyOf = (loadId: string): string => `wareboard-at-the-kiln-${loadId}`;

/** What is remembered of a load, or nothing done where nothing is or it cannot be read. */
export function remembered(loadId: string, plan: PlanLevels, storage: Pick<Storage, "getItem">): AtTheKiln {
  const fresh = nothingDone(plan);
  try {
    const kept: unknown = JSON.parse(storage.getItem(keyOf(loadId)) ?? "null");
    return isMemory(kept) ? kept : fresh;
  } catch {
    return fresh;
  }
}

/** Keeps it. False where this browser keeps nothing. */
export function remember(loadId: string, memory: AtTheKiln, storage: Pick<Storage, "setItem">): boolean {
  try {
    storage.setItem(keyOf(loadId), JSON.stringify(memory));
    return true;
  } catch {
    return false;
  }
}

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** Written by this program; but a browser's storage is anybody's. */
function isMemory(value: unknown): value is AtTheKiln {
  if (!isObject(value)) return false;
  const { prints, done, waiting, here, closedAt } = value;
  const isWaiting = (tick: unknown): boolean =>
    isObject(tick) && typeof tick.at === "string" && typeof tick.in === "boolean" && typeof tick.ware === "string";
  return (
    Array.isArray(prints) &&
    prints.every((print) => typeof print === "string") &&
    isObject(done) &&
    Object.values(done).every((at) => typeof at === "string") &&
    isObject(waiting) &&
    Object.values(waiting).every(isWaiting) &&
    (here === null || typeof here === "string") &&
    (closedAt === null || typeof closedAt === "string")
  );
}
