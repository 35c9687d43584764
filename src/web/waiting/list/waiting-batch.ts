import type { ConeName } from "../../../firing/cones/cone.ts";
import { coneOrNull } from "../../../firing/cones/cone-or-null.ts";
import type { FiringKind } from "../../../firing/cones/firing-kind.ts";
import type { PromisedTo } from "../../../studio/queries/promised.ts";
import type { ClayBodyRecord, GlazeRecord } from "../../../studio/records/clay-and-glaze-records.ts";
import type { WareRecord } from "../../../studio/records/ware-record.ts";
import { type DueStretch, dueStretch } from "../words/due-words.ts";
import { FIRING_WORDS, FORM_WORDS, STAGE_WORDS } from "../words/ware-words.ts";

/** A batch with everything the list asks of it worked out once. */
export interface WaitingBatch {
  readonly record: WareRecord;
  readonly cone: ConeName | null;
  readonly kind: FiringKind | null;
  readonly due: DueStretch;
  readonly glaze: string;
  readonly clayBody: string;
  /** How many of it stand in a load that is not unpacked yet. */
  readonly inLoads: number;
  /** What the search looks through, in small letters. */
  readonly text: string;
}

export interface WaitingSetting {
  readonly glazes: readonly GlazeRecord[];
  readonly clayBodies: readonly ClayBodyRecord[];
  /** Which pieces of a batch stand in loads, by its id. */
  readonly promised: ReadonlyMap<string, readonly PromisedTo[]>;
  /** Today on her calendar: 2026-11-25. */
  readonly today: string;
}

/** Every batch, ready for the list. */
export function waitingBatches(ware: readonly WareRecord[], setting: WaitingSetting): WaitingBatch[] {
  const glazes = new Map(setting.glazes.map(({ id, name }) => [id, name]));
  const bodies = new Map(setting.clayBodies.map(({ id, name }) => [id, name]));
  return ware.map((record) => {
    const glaze = (record.glazeId && glazes.get(record.glazeId)) || record.ware.glaze || "";
    const clayBody = (record.clayBodyId && bodies.get(record.clayBodyId)) || "";
    const cone = coneOrNull(record.ware.cone);
    return {
      record,
      cone,
      kind: record.firingKind,
      due: dueStretch(record.dueOn, setting.today),
      glaze,
      clayBody,
      inLoads: (setting.promised.get(record.id) ?? []).reduce((sum, { count }) => sum + count, 0),
      text: searchText(record, glaze, clayBody, cone),
    };
  });
}

function searchText(record: WareRecord, glaze: string, clayBody: string, cone: ConeName | null): string {
  const { ware, firingKind, stage, ownerNote } = record;
  const words = [
    ware.name,
    ware.form ? FORM_WORDS[ware.form] : "",
    glaze,
    clayBody,
    ownerNote,
    cone ? `cone ${cone}` : "",
    firingKind ? FIRING_WORDS[firingKind] : "",
    STAGE_WORDS[stage],
  ];
  return words.join("\n").toLowerCase();
}
