import { createStore, get, set, type UseStore } from "idb-keyval";
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
