import { isCone } from "../../../firing/cones/cone.ts";
import type { ConeRange } from "../../../firing/cones/cone-range.ts";
import { whyNotAt } from "../../../firing/cones/share-firing.ts";
import type { BatchDraft } from "./batch-draft.ts";
import type { Materials } from "./materials.ts";

/** Why a batch's glaze or clay body does not go with the cone written on it, in a sentence; null where nothing speaks against it. */
export function coneDoubt(draft: BatchDraft, name: string, { glazes, clayBodies }: Materials): string | null {
  const { firingKind: kind, cone } = draft;
  if (kind === null || !isCone(cone)) return null;
  const withCones = (of: { name: string; cones: ConeRange | null } | undefined) =>
    of?.cones ? { name: of.name, cones: of.cones } : undefined;
  const body = withCones(clayBodies.find(({ id }) => id === draft.clayBodyId));
  // A glaze says nothing of the bisque that goes before it.
  const glaze = kind === "bisque" ? undefined : withCones(glazes.find(({ id }) => id === draft.glazeId));
  if (!glaze && !body) return null;
  return whyNotAt({ name, kind, glaze, body }, cone);
}
