import { createStore, get, set, type UseStore } from "idb-keyval";
import type { ShownReadings } from "../../../studio/api/readings-contract.ts";
import type { FiringWatch } from "../../../studio/api/watch-contract.ts";

/** What the studio told last of a firing, and when by this device's clock. */
export interface KnownWatch {
  readonly watch: FiringWatch;
  readonly heardMs: number;
}

let store: UseStore | null = null;
const watches = (): UseStore => {
  store ??= createStore("wareboard-watches", "watches");
  return store;
};

/** What was known last, kept on this device for when the studio is away; null where nothing was, or nothing is kept. */
export async function keptWatch(firingId: string): Promise<KnownWatch | null> {
  try {
    return (await get<KnownWatch>(firingId, watches())) ?? null;
  } catch {
    return null;
  }
}

/** Keeps it; a browser that keeps nothing is let be. */
export function keepWatch(firingId: string, known: KnownWatch): void {
  set(firingId, known, watches()).catch(() => {});
}

const readingsOf = (firingId: string): string => `${firingId} readings`;

/** The readings that were shown last, likewise. */
export async function keptReadings(firingId: string): Promise<ShownReadings | null> {
  try {
    return (await get<ShownReadings>(readingsOf(firingId), watches())) ?? null;
  } catch {
    return null;
  }
}

export function keepReadings(firingId: string, shown: ShownReadings): void {
  set(readingsOf(firingId), shown, watches()).catch(() => {});
}
