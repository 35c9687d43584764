import { useMemo } from "react";
import { tell, wordsOf } from "../parts/index.ts";
import { newId, useCommand, useUndo } from "../studio/hooks.ts";
import { type MaterialDraft, materialFields } from "./material-draft.ts";

/** Which of the two lists. */
export type MaterialKind = "clayBodies" | "glazes";

const COMMAND_OF = { clayBodies: "clay-body", glazes: "glaze" } as const;

/** What can be done to clay bodies or to glazes. Each shows at once; a refusal is told in words. */
export function useMaterialCommands(kind: MaterialKind) {
  const command = useCommand();
  const { undo } = useUndo("materials");
  return useMemo(() => {
    const fieldsOf = (draft: MaterialDraft) => ({
      ...materialFields(draft),
      ...(kind === "glazes" ? { runs: draft.runs } : {}),
    });
    const tellRefusal = (error: unknown): void => tell(wordsOf(error));
    return {
      add: (draft: MaterialDraft) => {
        const record = { id: newId(), ...fieldsOf(draft) };
        const now = new Date().toISOString();
        command(`add-${COMMAND_OF[kind]}`, record, (cache) =>
          cache.put(kind, { ...record, createdAt: now, changedAt: now } as never),
        ).catch(tellRefusal);
      },
      change: (id: string, draft: MaterialDraft) => {
        const fields = fieldsOf(draft);
        command(`change-${COMMAND_OF[kind]}`, { id, ...fields }, (cache) =>
          cache.patch(kind, id, (before) => ({ ...before, ...fields }) as never),
        ).catch(tellRefusal);
      },
      remove: (id: string, name: string) => {
        const sent = command(`remove-${COMMAND_OF[kind]}`, { id }, (cache) => cache.remove(kind, id));
        tell(`Removed ${name}`, () => undo().catch(tellRefusal));
        sent.catch(tellRefusal);
      },
    };
  }, [kind, command, undo]);
}
