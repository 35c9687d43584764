import type { FiringKind } from "../../../firing/cones/firing-kind.ts";
import { FIRING_WORDS } from "../../waiting/words/ware-words.ts";

/** What a programme may be for. */
export const KIND_CHOICES = (Object.keys(FIRING_WORDS) as FiringKind[]).map((id) => ({ id, label: FIRING_WORDS[id] }));
