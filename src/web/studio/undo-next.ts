import type { HistoryEntry } from "../../studio/api/contract.ts";

/** What undo and redo would do next, from a scope's history, the newest first. */
export function nextUndoRedo(history: readonly HistoryEntry[]): {
  undo: HistoryEntry | null;
  redo: HistoryEntry | null;
} {
  const newestDone = history.findIndex(({ undone }) => !undone);
  const undoneSince = newestDone === -1 ? history : history.slice(0, newestDone);
  return { undo: history[newestDone] ?? null, redo: undoneSince.at(-1) ?? null };
}
