import { dueWords } from "../words/due-words.ts";
import { coneWords, FIRING_WORDS, STAGE_WORDS } from "../words/ware-words.ts";
import type { BatchDraft } from "./batch-draft.ts";
import type { Materials } from "./materials.ts";

/** What is folded away, in one line, so that nothing remembered goes in unseen. */
export function batchSummary(draft: BatchDraft, { glazes, clayBodies }: Materials, today: string): string {
  const nameIn = (list: readonly { id: string; name: string }[], id: string | null): string =>
    list.find((each) => each.id === id)?.name ?? "";
  const glaze = nameIn(glazes, draft.glazeId) || draft.glazeWords;
  const body = nameIn(clayBodies, draft.clayBodyId);
  const parts = [
    STAGE_WORDS[draft.stage],
    draft.firingKind ? `${FIRING_WORDS[draft.firingKind].toLowerCase()} firing` : "",
    coneWords(draft.cone),
    [glaze, body].filter(Boolean).join(" on "),
    draft.dueOn ? `due ${dueWords(draft.dueOn, today)}` : "",
    draft.mustFire ? "must fire" : "",
    draft.cookie ? "on a cookie" : "",
    draft.value === 1 ? "" : `worth ${draft.value}`,
  ];
  return parts.filter(Boolean).join(" · ");
}
