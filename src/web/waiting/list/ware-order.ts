import { conePlace } from "../../../firing/cones/cone.ts";
import type { WaitingBatch } from "./waiting-batch.ts";

/** How the list can be ordered. */
export const WARE_ORDERS = ["due", "name", "cone", "newest"] as const;
export type WareOrder = (typeof WARE_ORDERS)[number];

export const WARE_ORDER_WORDS: Readonly<Record<WareOrder, string>> = {
  due: "Due first",
  name: "By name",
  cone: "By cone",
  newest: "Newest first",
};

// One collator for all comparisons: making one costs a thousand of them.
const byLetters = new Intl.Collator(undefined, { numeric: true, sensitivity: "base" });
const byName = (a: WaitingBatch, b: WaitingBatch): number =>
  byLetters.compare(a.record.ware.name, b.record.ware.name) || (a.record.id < b.record.id ? -1 : 1);

const NEVER = "9999-12-31";
const NO_CONE = 1000;
const compareText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

const COMPARE: Readonly<Record<WareOrder, (a: WaitingBatch, b: WaitingBatch) => number>> = {
  due: (a, b) => compareText(a.record.dueOn ?? NEVER, b.record.dueOn ?? NEVER),
  name: byName,
  cone: (a, b) => (a.cone ? conePlace(a.cone) : NO_CONE) - (b.cone ? conePlace(b.cone) : NO_CONE),
  newest: (a, b) => compareText(b.record.createdAt, a.record.createdAt),
};

/** The batches in an order; alike ones by name. What has no day or no cone comes last. */
export function orderWare(batches: readonly WaitingBatch[], order: WareOrder): WaitingBatch[] {
  const compare = COMPARE[order];
  return [...batches].sort((a, b) => compare(a, b) || byName(a, b));
}
