import type { LoadRequest } from "../../src/loading/load-request.ts";
import { type LaidShelf, type PostHeap, type Stack, shelfIsClear } from "./furniture-by-hand.ts";
import { fullHeightMm, headroomMm } from "./plan-by-hand.ts";

/** One level of a stacking: its shelf, the stack under it, and the tallest piece that may stand on it. */
export interface StackedLevel {
  readonly laid: LaidShelf;
  readonly stack: Stack;
  readonly topMm: number;
  readonly clearMm: number;
}
export type Stacking = readonly StackedLevel[];

const MOST_LOOKED_AT = 200_000;

/**
 * Every way to stack the shelves, widest lowest, that is worth a look: within the chamber, from the stock of posts, clear
 * of the probes; of those that let the same kinds stand on as many levels, or fewer kinds, only the best.
 */
export function stackings(
  request: LoadRequest,
  shelves: readonly LaidShelf[],
  heaps: readonly PostHeap[],
  stacks: readonly Stack[],
): Stacking[] {
  const { rules, kiln } = request;
  const roof = kiln.chamber.depthMm - rules.lidMm;
  const heights = [...new Set(request.ware.map(fullHeightMm))].sort((a, b) => a - b);
  const classOf = (clearMm: number): number => heights.filter((height) => height <= clearMm + 1e-9).length;
  const kept = new Map<string, Stacking>();
  const stock = heaps.map((heap) => heap.count);
  const clear = new Map<string, boolean>();
  const isClear = (laid: LaidShelf, undersideMm: number): boolean => {
    const key = `${laid.shelf.name} ${undersideMm}`;
    const known = clear.get(key) ?? shelfIsClear(request, laid, undersideMm);
    clear.set(key, known);
    return known;
  };
  let looked = 0;

  const grow = (levels: readonly StackedLevel[]): void => {
    const below = levels.at(-1);
    if (below) keep([...levels.slice(0, -1), { ...below, clearMm: roof - below.topMm }]);
    const laid = shelves[levels.length];
    if (!laid || looked > MOST_LOOKED_AT) return;
    const base = below?.topMm ?? 0;
    for (const stack of stacks) {
      const topMm = base + stack.totalMm + laid.shelf.thicknessMm;
      if (topMm + heights[0]! > roof) break;
      const clearMm = stack.totalMm - headroomMm(request, laid.shelf.thicknessMm);
      if (below ? classOf(clearMm) === 0 : stack.totalMm < rules.floorAirMm) continue;
      if (!isClear(laid, base + stack.totalMm)) continue;
      for (const heap of stack.heaps) stock[heap] = stock[heap]! - 3;
      looked++;
      if (stack.heaps.every((heap) => stock[heap]! >= 0)) {
        const lower = below ? [...levels.slice(0, -1), { ...below, clearMm }] : [];
        grow([...lower, { laid, stack, topMm, clearMm: 0 }]);
      }
      for (const heap of stack.heaps) stock[heap] = stock[heap]! + 3;
    }
  };
  const keep = (levels: Stacking): void => {
    const key = levels.map((level) => classOf(level.clearMm)).join();
    if (!kept.has(key)) kept.set(key, levels);
  };
  if (heights.length > 0) grow([]);

  const named = [...kept.values()].map((levels) => ({
    levels,
    classes: levels.map((level) => classOf(level.clearMm)),
  }));
  const atLeast = (a: readonly number[], b: readonly number[]): boolean =>
    a.length >= b.length && b.every((each, l) => a[l]! >= each);
  return named
    .filter(({ classes }) => !named.some((other) => other.classes !== classes && atLeast(other.classes, classes)))
    .map(({ levels }) => levels);
}
