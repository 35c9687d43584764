import type { FiringKind } from "../../../firing/cones/firing-kind.ts";
import type { WareStage } from "../../../studio/records/ware-record.ts";
import type { WareChange } from "../batch/batch-change.ts";

/** What many batches are to have in common. "keep" leaves each as it is; "" takes it out. */
export interface Alike {
  readonly firingKind: FiringKind | "" | "keep";
  readonly cone: string;
  readonly stage: WareStage | "keep";
  readonly due: "keep" | "none" | "day";
  readonly dueOn: string | null;
  /** "words" for a glaze in her own words. */
  readonly glaze: string;
  readonly glazeWords: string;
  readonly clayBody: string;
}

export const KEEP_ALL: Alike = {
  firingKind: "keep",
  cone: "keep",
  stage: "keep",
  due: "keep",
  dueOn: null,
  glaze: "keep",
  glazeWords: "",
  clayBody: "keep",
};

export const GLAZE_IN_WORDS = " words";

/** The change that makes them so; null where nothing is to change, or a day is meant and none is given. */
export function changeToAlike(alike: Alike): WareChange | null {
  const { firingKind, cone, stage, due, dueOn, glaze, clayBody } = alike;
  const inWords = glaze === GLAZE_IN_WORDS;
  const words = alike.glazeWords.trim();
  if ((due === "day" && dueOn === null) || (inWords && words === "")) return null;
  const ware = {
    ...(cone === "keep" ? {} : { cone: cone === "" ? null : cone }),
    // A glaze is a recorded one or her words; the one takes the other's place.
    ...(glaze === "keep" ? {} : { glaze: inWords ? words : null }),
  };
  const change: WareChange = {
    ...(firingKind === "keep" ? {} : { firingKind: firingKind === "" ? null : firingKind }),
    ...(stage === "keep" ? {} : { stage }),
    ...(due === "keep" ? {} : { dueOn: due === "none" ? null : dueOn }),
    ...(glaze === "keep" ? {} : { glazeId: glaze === "" || inWords ? null : glaze }),
    ...(clayBody === "keep" ? {} : { clayBodyId: clayBody === "" ? null : clayBody }),
    ...(Object.keys(ware).length === 0 ? {} : { ware }),
  };
  return Object.keys(change).length === 0 ? null : change;
}
