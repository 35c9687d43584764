import type { LoadRecord } from "../../../studio/records/load-record.ts";
import type { WareRecord } from "../../../studio/records/ware-record.ts";

const stamps = { createdAt: "2026-11-01T09:00:00.000Z", changedAt: "2026-11-01T09:00:00.000Z" };
type Standing = readonly string[];

/** An invented batch: mugs of 86 mm, glazed, for cone 6. */
export const batch = (id: string, change: Partial<WareRecord> & { count?: number; name?: string } = {}): WareRecord => {
  const { count = 6, name = id, ...rest } = change;
  return {
    id,
    ware: { name, count, diameterMm: 86, heightMm: 96, cone: "6" },
    stage: "glazed",
    firingKind: "glaze",
    dueOn: null,
    ownerNote: "",
    clayBodyId: null,
    glazeId: null,
    ...stamps,
    ...rest,
  };
};

/** An invented plan of one level with these pieces standing on it, one upon the other for all the tests care. */
export const planOf = (
  standing: Standing,
  left: readonly [string, number][] = [],
): NonNullable<LoadRecord["plan"]> => ({
  format: "load-plan/1",
  levels: [
    {
      shelf: "full",
      topMm: 41,
      xMm: 0,
      yMm: 0,
      turnDeg: 0,
      posts: [],
      placements: standing.map((ware) => ({ ware, xMm: 0, yMm: 0, turnDeg: 0 })),
    },
  ],
  left: left.map(([ware, count]) => ({ ware, count, reason: "no room" })),
});

/** An invented load of these batches, each as a kind named as the batch is. */
export const load = (
  id: string,
  batches: readonly WareRecord[],
  standing: Standing | null,
  change: Partial<LoadRecord> = {},
): LoadRecord => ({
  id,
  kilnId: "k1",
  name: id,
  state: "planned",
  request: {
    format: "load-request/1",
    kiln: { name: "back room", chamber: { shape: "round", diameterMm: 430, depthMm: 460 } },
    furniture: {
      shelves: [{ name: "full", shape: "disc", diameterMm: 390, thicknessMm: 16, count: 3 }],
      posts: [{ heightMm: 100, widthMm: 35, shape: "square", count: 6 }],
    },
    ware: batches.map(({ ware }) => ware),
  },
  plan: standing && planOf(standing),
  pins: [],
  ticks: [],
  sources: batches.map(({ id: wareId, ware }) => ({ ware: ware.name, wareId })),
  version: 1,
  ...stamps,
  ...change,
});
