import type { LoadRecord } from "../../../studio/records/load-record.ts";
import { tell, wordsOf } from "../../parts/index.ts";
import { showChanged } from "../../studio/cache.ts";
import { ask, StudioAway, StudioRefusal } from "../../studio/client.ts";
import { giveCommand } from "../../studio/give-command.ts";
import { line, onLateRefusal, TakenBack, tellTakenBack } from "../../studio/sending.ts";
import { EditLine, type EditLinePorts, type EditOutcome } from "./edit-line.ts";
import { changeLoadInput } from "./load-edit.ts";

const ASK_AGAIN_MS = 2000;

const ports: EditLinePorts = {
  send: async (on, edit, after): Promise<EditOutcome> => {
    try {
      await giveCommand("change-load", changeLoadInput(on, edit), (cache) => cache.put("loads", after));
      return { kind: "done" };
    } catch (error) {
      if (error instanceof TakenBack) return { kind: "taken back" };
      const isOlder = error instanceof StudioRefusal && error.code === "changed-since";
      return isOlder ? { kind: "changed since" } : { kind: "refused", error };
    }
  },
  read: async (id) => {
    for (;;) {
      try {
        const load = await ask<LoadRecord>(`/loads/${encodeURIComponent(id)}`);
        showChanged({ loads: { [id]: load } });
        return load;
      } catch (error) {
        if (error instanceof StudioRefusal) return null;
        if (!(error instanceof StudioAway)) throw error;
        await new Promise((resolve) => setTimeout(resolve, ASK_AGAIN_MS));
      }
    }
  },
  takeBackAll: async (id) => {
    for (const command of await line.line()) {
      const isOurs = command.name === "change-load" && (command.input as { id?: unknown }).id === id;
      if (isOurs && (await line.takeBack(command.key))) tellTakenBack(command);
    }
  },
  refused: (error) => tell(`Not done: ${wordsOf(error)}`),
};

// Edits given before a reload have nobody left who waits for them; what she did in the last of them is all she did.
onLateRefusal(({ name, input, before }, error) => {
  if (name !== "change-load" || !(error instanceof StudioRefusal) || error.code !== "changed-since") return;
  const { id, plan, pins } = input as Partial<LoadRecord>;
  const was = id === undefined ? undefined : (before.loads?.[id] as LoadRecord | null | undefined);
  if (was && plan) void editLineOf(was.id).takeIn({ ...was, plan, pins: pins ?? [] });
});

const lines = new Map<string, EditLine>();

/** The edits of a load that are on their way. They belong to no screen: they go on while she looks at another one. */
export function editLineOf(loadId: string): EditLine {
  const known = lines.get(loadId);
  if (known) return known;
  const made = new EditLine(ports);
  lines.set(loadId, made);
  return made;
}
