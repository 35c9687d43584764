import { useMemo } from "react";
import type { WareRecord } from "../../studio/records/ware-record.ts";
import { tell, wordsOf } from "../parts/index.ts";
import { newId, useCommand, useUndo } from "../studio/hooks.ts";
import { changed, type WareChange } from "./batch/batch-change.ts";
import type { NewBatch } from "./batch/batch-draft.ts";

/** What can be done to batches. Each shows at once; a refusal is told in words and put back. */
export interface WareCommands {
  /** Puts batches in, and says so. */
  readonly add: (batches: readonly NewBatch[], words: string) => Promise<boolean>;
  /** Changes batches alike; `words` are told with an Undo, where there are any. */
  readonly change: (ids: readonly string[], change: WareChange, words?: string) => Promise<boolean>;
  /** Changes batches each in its own way; one Undo takes all of it back. */
  readonly changeEach: (
    changes: readonly { ids: readonly string[]; change: WareChange }[],
    words: string,
  ) => Promise<boolean>;
  readonly remove: (ids: readonly string[], words: string) => Promise<boolean>;
}

/** What can be done to batches, ready to be called. */
export function useWareCommands(): WareCommands {
  const command = useCommand();
  const { undo: undoLast } = useUndo("ware");
  return useMemo(() => {
    const undo = async (times: number): Promise<void> => {
      try {
        for (let i = 0; i < times; i += 1) await undoLast();
      } catch (error) {
        tell(wordsOf(error));
      }
    };
    /** The notice comes at once: while the studio is away, the promise waits for it. */
    const given = async (sent: readonly Promise<unknown>[], words: string | undefined): Promise<boolean> => {
      if (words !== undefined) tell(words, () => void undo(sent.length));
      try {
        await Promise.all(sent);
        return true;
      } catch (error) {
        tell(wordsOf(error));
        return false;
      }
    };
    const change = (ids: readonly string[], how: WareChange) =>
      command("change-ware", { ids, change: how }, (cache) => {
        for (const id of ids) cache.patch("ware", id, (record) => changed(record, how));
      });
    return {
      add: (batches, words) => {
        const ware = batches.map((batch) => ({ id: newId(), ...batch }));
        const now = new Date().toISOString();
        const sent = command("add-ware", { ware }, (cache) => {
          for (const batch of ware) cache.put("ware", { ...batch, createdAt: now, changedAt: now } as WareRecord);
        });
        return given([sent], words);
      },
      change: (ids, how, words) => given([change(ids, how)], words),
      changeEach: (changes, words) =>
        given(
          changes.map((each) => change(each.ids, each.change)),
          words,
        ),
      remove: (ids, words) => {
        const sent = command("remove-ware", { ids }, (cache) => {
          for (const id of ids) cache.remove("ware", id);
        });
        return given([sent], words);
      },
    };
  }, [command, undoLast]);
}
