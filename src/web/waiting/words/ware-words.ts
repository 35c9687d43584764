import type { FiringKind } from "../../../firing/cones/firing-kind.ts";
import type { WareStage } from "../../../studio/records/ware-record.ts";
import type { FormName } from "../../../ware/forms.ts";

export const FORM_WORDS: Readonly<Record<FormName, string>> = {
  beaker: "Beaker",
  mug: "Mug",
  bowl: "Bowl",
  plate: "Plate",
  vase: "Vase",
  bottle: "Bottle",
  jar: "Jar",
  lid: "Lid",
  jug: "Jug",
  teapot: "Teapot",
  box: "Box",
  tile: "Tile",
  other: "Other",
};

export const FIRING_WORDS: Readonly<Record<FiringKind, string>> = {
  bisque: "Bisque",
  glaze: "Glaze",
  "once-fired": "Once-fired",
  lustre: "Lustre",
};

export const STAGE_WORDS: Readonly<Record<WareStage, string>> = {
  greenware: "Greenware",
  bisque: "Bisqued",
  glazed: "Glazed",
  finished: "Finished",
};

/** Every form and stage, in order. (Read from here, the records' schemas stay out of what the browser must load.) */
export const FORMS = Object.keys(FORM_WORDS) as FormName[];
export const STAGES = Object.keys(STAGE_WORDS) as WareStage[];

/** "1 piece", "84 pieces". */
export const pieces = (count: number): string => `${count} ${count === 1 ? "piece" : "pieces"}`;
/** "1 batch", "14 batches". */
export const batches = (count: number): string => `${count} ${count === 1 ? "batch" : "batches"}`;
/** "cone 6", or "no cone yet". */
export const coneWords = (cone: string | null | undefined): string => (cone ? `cone ${cone}` : "no cone yet");
