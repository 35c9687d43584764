import { CONES, type ConeName, conePlace } from "../../../firing/cones/cone.ts";
import { coneOrNull } from "../../../firing/cones/cone-or-null.ts";
import type { FiringKind } from "../../../firing/cones/firing-kind.ts";
import type { ProgrammeWish } from "../../../firing/programme/write-programme.ts";
import type { LoadRecord } from "../../../studio/records/load-record.ts";
import type { WareRecord } from "../../../studio/records/ware-record.ts";
import { loadFacts } from "../../loads/list/load-facts.ts";

export type WrittenWish = Omit<ProgrammeWish, "simulate" | "mostSegments" | "name">;

/** Cones she is offered: half cones are rare, but some glazes want them. */
export const CONE_CHOICES = CONES.map((cone) => ({ id: cone, label: `cone ${cone}` }));

const USUAL_CONE: Readonly<Record<FiringKind, ConeName>> = {
  bisque: "04",
  glaze: "6",
  "once-fired": "6",
  lustre: "018",
};

/**
 * What a load's ware asks of its programme: its kind, and the coolest of its cones, for ware can be fired again but not
 * less. Where the ware says nothing, what is usual for its kind.
 */
export function usualWish(load: LoadRecord, ware: readonly WareRecord[]): WrittenWish {
  const { kinds, cones } = loadFacts(load, ware);
  const kind = kinds[0] ?? "glaze";
  const asked = cones.flatMap((text) => coneOrNull(text) ?? []).sort((a, b) => conePlace(a) - conePlace(b));
  return { cone: asked[0] ?? USUAL_CONE[kind], kind, pace: "medium" };
}
