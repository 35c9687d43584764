/** What this device remembers of one kiln that is being unpacked. What came out of it, the studio is told. */
export interface UnloadMemory {
  /** Where she is: "opening", "summary", or a level by its index. */
  readonly here: Stop | null;
  /** The firing cone she set, where nothing else tells it. */
  readonly meantCone: string | null;
}

/** A place in the unpacking: the opened kiln, a shelf, what is kept at the end. */
export type Stop = "opening" | "summary" | number;

export const NOTHING_YET: UnloadMemory = { here: null, meantCone: null };

const keyOf = (firingId: string): string => `wareboard-unload-${firingId}`;

/** What is remembered of a firing; nothing yet where nothing is or it cannot be read. */
export function remembered(firingId: string, storage: Pick<Storage, "getItem">): UnloadMemory {
  try {
    const kept: unknown = JSON.parse(storage.getItem(keyOf(firingId)) ?? "null");
    return isMemory(kept) ? kept : NOTHING_YET;
  } catch {
    return NOTHING_YET;
  }
}

/** Keeps it. False where this browser keeps nothing. */
export function remember(firingId: string, memory: UnloadMemory, storage: Pick<Storage, "setItem">): boolean {
  try {
    storage.setItem(keyOf(firingId), JSON.stringify(memory));
    return true;
  } catch {
    return false;
  }
}

/** Written by this program; but a browser's storage is anybody's. */
function isMemory(value: unknown): value is UnloadMemory {
  if (typeof value !== "object" || value === null) return false;
  const { here, meantCone } = value as Record<string, unknown>;
  return (
    (here === null || here === "opening" || here === "summary" || typeof here === "number") &&
    (meantCone === null || typeof meantCone === "string")
  );
}
