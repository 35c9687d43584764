import { useEffect, useMemo, useState } from "react";
import type { CommandAnswer, HistoryEntry } from "../../studio/api/contract.ts";
import { showChanged } from "./cache.ts";
import { ask } from "./client.ts";
import { useWaitingCount } from "./connection.ts";
import { newestOf, type WaitingCommand } from "./line.ts";
import { scopeOf } from "./scope-of.ts";
import { line, showAnswer, shownEntries, tellTakenBack } from "./sending.ts";
import { nextUndoRedo } from "./undo-next.ts";

export interface UndoRedo {
  readonly undo: () => Promise<void>;
  readonly redo: () => Promise<void>;
  readonly canUndo: boolean;
  readonly canRedo: boolean;
  /** What undo would take back, in words; empty where there is nothing. */
  readonly undoText: string;
  readonly redoText: string;
}

/** Undo and redo within a scope whose history is given. What has not been sent yet is taken out of the line instead. */
export function useUndoRedo(scope: string, history: readonly HistoryEntry[] | undefined): UndoRedo {
  const waiting = useNewestWaiting(scope);
  return useMemo(() => {
    const next = nextUndoRedo(history ?? []);
    return {
      undo: () => undo(scope),
      redo: () => sendTo("/redo", scope),
      canUndo: waiting !== null || next.undo !== null,
      canRedo: waiting === null && next.redo !== null,
      undoText: waiting === null ? (next.undo?.summary ?? "") : "The last change, not saved yet",
      redoText: waiting === null ? (next.redo?.summary ?? "") : "",
    };
  }, [scope, history, waiting]);
}

function useNewestWaiting(scope: string): WaitingCommand | null {
  const count = useWaitingCount();
  const [newest, setNewest] = useState<WaitingCommand | null>(null);
  useEffect(() => {
    let wanted = true;
    if (count === 0) setNewest(null);
    else
      void line.line().then((all) => {
        if (wanted) setNewest(newestOf(all, scope, scopeOf));
      });
    return () => {
      wanted = false;
    };
  }, [count, scope]);
  return newest;
}

async function undo(scope: string): Promise<void> {
  const newest = newestOf(await line.line(), scope, scopeOf);
  if (newest && (await line.takeBack(newest.key))) {
    showChanged(newest.before);
    tellTakenBack(newest);
    return;
  }
  await sendTo("/undo", scope);
}

async function sendTo(path: "/undo" | "/redo", scope: string): Promise<void> {
  const answer = await ask<CommandAnswer>(path, { body: { scope } });
  shownEntries.add(answer.entry.id);
  showAnswer(answer);
}
