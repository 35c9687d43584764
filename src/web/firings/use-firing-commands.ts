import { useMemo } from "react";
import type { Programme, ProgrammeFile } from "../../firing/programme/programme.ts";
import type { FiringRecord } from "../../studio/records/firing-record.ts";
import { undoLast } from "../loads/undo-last.ts";
import { tell, wordsOf } from "../parts/index.ts";
import { type GiveCommand, useCommand } from "../studio/hooks.ts";

/** What can be done with a firing on its way to the switch. A refusal is told in words. */
export interface FiringCommands {
  readonly rename: (firing: FiringRecord, name: string) => void;
  readonly chooseProgramme: (firing: FiringRecord, programme: Programme) => void;
  /** Null: whenever she is ready. */
  readonly planStart: (firing: FiringRecord, startAt: string | null) => void;
  readonly foretellAgain: (firing: FiringRecord) => void;
  readonly tick: (firing: FiringRecord, item: string, at: string | null) => void;
  readonly start: (firing: FiringRecord, at: string) => Promise<boolean>;
  readonly remove: (firing: FiringRecord) => Promise<boolean>;
}

export function useFiringCommands(): FiringCommands {
  const command = useCommand();
  return useMemo(() => firingCommands(command), [command]);
}

function firingCommands(command: GiveCommand): FiringCommands {
  const patch = (name: string, firing: FiringRecord, input: object, show: (before: FiringRecord) => FiringRecord) =>
    command(name, { id: firing.id, ...input }, (cache) => cache.patch("firings", firing.id, show));
  return {
    rename: (firing, name) =>
      void told(async () => void (await patch("change-firing", firing, { name }, (was) => ({ ...was, name })))),
    chooseProgramme: (firing, programme) =>
      void told(async () => {
        const file = JSON.parse(JSON.stringify(programme)) as ProgrammeFile;
        await patch("change-firing", firing, { programme: file }, (was) => ({ ...was, programme: file }));
      }),
    planStart: (firing, plannedStartAt) =>
      void told(async () => {
        await patch("change-firing", firing, { plannedStartAt }, ({ plannedStartAt: _, ...was }) =>
          plannedStartAt === null ? was : { ...was, plannedStartAt },
        );
      }),
    foretellAgain: ({ id }) =>
      void told(async () => void (await command("change-firing", { id, foretellAgain: true }))),
    tick: (firing, item, at) =>
      void told(async () => {
        await patch("tick-check", firing, { item, at }, (was) => ({
          ...was,
          checklist: (was.checklist ?? []).map((each) => (each.item === item ? { item, at } : each)),
        }));
      }),
    start: (firing, at) =>
      told(async () => {
        await patch("start-firing", firing, { at }, (was) => ({ ...was, state: "firing", startedAt: at }));
        tell(`${firing.name} has started`, () => void undoLast(`firing:${firing.id}`));
      }),
    remove: ({ id, name }) =>
      told(async () => {
        await command("remove-firing", { id }, (cache) => cache.remove("firings", id));
        tell(`Took out the firing ${name}`, () => void undoLast("firings"));
      }),
  };
}

/** True where it was done. */
async function told(work: () => Promise<void>): Promise<boolean> {
  try {
    await work();
    return true;
  } catch (error) {
    tell(wordsOf(error));
    return false;
  }
}
