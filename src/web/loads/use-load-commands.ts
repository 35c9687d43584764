import { useMemo } from "react";
import type { LoadRecord, LoadState } from "../../studio/records/load-record.ts";
import { tell, wordsOf } from "../parts/index.ts";
import { type GiveCommand, useCommand } from "../studio/hooks.ts";
import { NEXT_STATE } from "./list/load-groups.ts";
import { undoLast } from "./undo-last.ts";

const DONE_WORDS: Readonly<Record<LoadState, string>> = {
  planned: "is planned again",
  loading: "is being loaded",
  loaded: "is loaded",
  fired: "is fired",
  unpacked: "is unpacked",
};

/** What can be done with a load from the lists. Each says what it did, with a way back; a refusal is told in words. */
export interface LoadCommands {
  /** The next step on its way: loading, loaded, fired. */
  readonly next: (load: LoadRecord) => Promise<void>;
  readonly rename: (load: LoadRecord, name: string) => Promise<void>;
  readonly remove: (load: LoadRecord) => Promise<void>;
}

export function useLoadCommands(): LoadCommands {
  const command = useCommand();
  return useMemo(() => loadCommands(command), [command]);
}

function loadCommands(command: GiveCommand): LoadCommands {
  const change = (load: LoadRecord, what: Partial<Pick<LoadRecord, "state" | "name">>) =>
    command("change-load", { id: load.id, version: load.version, ...what }, (cache) =>
      cache.patch("loads", load.id, (before) => ({ ...before, ...what })),
    );
  return {
    next: (load) =>
      told(async () => {
        const state = NEXT_STATE[load.state]?.state;
        if (!state) return;
        await change(load, { state });
        tell(`${load.name} ${DONE_WORDS[state]}`, () => void undoLast(`load:${load.id}`));
      }),
    rename: (load, name) => told(async () => void (await change(load, { name }))),
    remove: (load) =>
      told(async () => {
        await command("remove-load", { id: load.id }, (cache) => cache.remove("loads", load.id));
        tell(`Took out ${load.name}`, () => void undoLast("loads"));
      }),
  };
}

async function told(work: () => Promise<void>): Promise<void> {
  try {
    await work();
  } catch (error) {
    tell(wordsOf(error));
  }
}
