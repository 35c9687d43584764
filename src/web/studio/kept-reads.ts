import { createStore, get, set } from "idb-keyval";
import type { StudioCard } from "../../studio/api/contract.ts";
import { queries } from "./cache.ts";

// What was read last, kept on this device: shown at once after a reload, and all there is while the studio is away.

const KEPT = new Set([
  "studio",
  "settings",
  "ware",
  "kilns",
  "clayBodies",
  "glazes",
  "loads",
  "firings",
  "notes",
  "photos",
]);
/** Soon, for she may reload; not at once, for a list changes several times in a moment. */
const WRITE_AFTER_MS = 80;

let store: ReturnType<typeof createStore> | null = null;
const reads = () => {
  store ??= createStore("wareboard-reads", "reads");
  return store;
};

/** What was read last, or undefined where nothing was, or where this browser keeps nothing. */
export async function keptRead(name: string): Promise<unknown> {
  try {
    const kept = await get<unknown>(name, reads());
    // A studio that was new then may have begun since, and its first page is no place to be sent to by mistake.
    return name === "studio" && (kept as StudioCard | undefined)?.isNew ? undefined : kept;
  } catch {
    return undefined;
  }
}

/** From now on, writes down whatever the screens know, soon after it changes. */
export function keepReads(): void {
  const due = new Map<string, ReturnType<typeof setTimeout>>();
  queries.getQueryCache().subscribe(({ type, query }) => {
    const [name] = query.queryKey as [string];
    if (type !== "updated" || query.queryKey.length !== 1 || !KEPT.has(name) || due.has(name)) return;
    const write = () => {
      due.delete(name);
      if (query.state.data !== undefined) set(name, query.state.data, reads()).catch(() => {});
    };
    due.set(name, setTimeout(write, WRITE_AFTER_MS));
  });
}
