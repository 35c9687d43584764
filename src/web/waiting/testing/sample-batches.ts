import type { WareRecord } from "../../../studio/records/ware-record.ts";
import { type WaitingBatch, waitingBatches } from "../list/waiting-batch.ts";

export const TODAY = "2026-11-25";
const STAMP = "2026-11-01T08:00:00.000Z";

/** A batch with as much said of it as a test needs. */
export function sampleBatch(
  id: string,
  ware: Partial<WareRecord["ware"]> = {},
  more: Partial<Omit<WareRecord, "id" | "ware">> = {},
): WareRecord {
  return {
    id,
    ware: { name: id, count: 4, diameterMm: 80, heightMm: 90, ...ware },
    stage: "bisque",
    firingKind: "glaze",
    dueOn: null,
    ownerNote: "",
    clayBodyId: null,
    glazeId: null,
    createdAt: STAMP,
    changedAt: STAMP,
    ...more,
  };
}

/** The same, ready for the list. */
export const listed = (ware: readonly WareRecord[], inLoads: ReadonlyMap<string, number> = new Map()): WaitingBatch[] =>
  waitingBatches(ware, {
    glazes: [{ id: "rain", name: "Rain", cones: null, runs: true, note: "", createdAt: STAMP, changedAt: STAMP }],
    clayBodies: [{ id: "buff", name: "Buff stoneware", cones: null, note: "", createdAt: STAMP, changedAt: STAMP }],
    promised: new Map([...inLoads].map(([id, count]) => [id, [{ loadId: "load", loadName: "First", count }]])),
    today: TODAY,
  });

export const namesOf = (batches: readonly WaitingBatch[]): string[] => batches.map(({ record }) => record.id);
