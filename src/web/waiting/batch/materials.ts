import type { ClayBodyRecord, GlazeRecord } from "../../../studio/records/clay-and-glaze-records.ts";

/** The recorded clay bodies and glazes. */
export interface Materials {
  readonly clayBodies: readonly ClayBodyRecord[];
  readonly glazes: readonly GlazeRecord[];
}
