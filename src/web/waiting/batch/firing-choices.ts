import { CONES } from "../../../firing/cones/cone.ts";
import { FIRING_KINDS, type FiringKind } from "../../../firing/cones/firing-kind.ts";
import type { WareStage } from "../../../studio/records/ware-record.ts";
import { FIRING_WORDS, STAGE_WORDS, STAGES } from "../words/ware-words.ts";

interface Choice<Id extends string> {
  readonly id: Id;
  readonly label: string;
}

/** The choices of a field where nothing may be said: "" stands for that. */
export const KIND_CHOICES: readonly Choice<FiringKind | "">[] = [
  ...FIRING_KINDS.map((id) => ({ id, label: FIRING_WORDS[id] })),
  { id: "", label: "Not said" },
];

export const STAGE_CHOICES: readonly Choice<WareStage>[] = STAGES.map((id) => ({ id, label: STAGE_WORDS[id] }));

export const CONE_CHOICES: readonly Choice<string>[] = [
  { id: "", label: "no cone yet" },
  ...CONES.map((cone) => ({ id: cone, label: `cone ${cone}` })),
];
