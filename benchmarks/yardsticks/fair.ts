import type { LoadPlan } from "../../src/loading/load-plan.ts";
import type { LoadRequest } from "../../src/loading/load-request.ts";
import type { Ware } from "../../src/ware/ware.ts";
import { type PouredLevels, pourIn } from "./best-levels.ts";
import { laidShelves, type PostHeap, postHeaps, postPlaces, stacksOf, widestPost } from "./furniture-by-hand.ts";
import { LevelByHand, type Touch } from "./level-by-hand.ts";
import { Bench, fullHeightMm, importance, type LoadedLevel, roomMm2, writeDown } from "./plan-by-hand.ts";
import { stackings } from "./stackings.ts";

const TOUCH: Touch = { ringMm: 3, stepDeg: 3, handleDeg: [180, 90, 270, 0] };
/** How full a careful hand gets a shelf; found from these loads themselves, which come to 0.6 to 0.7. */
const USUAL_FILL = 0.65;
const STACKINGS_LOADED = 6;

/**
 * The fair yardstick: heights of the levels by a linear programme over every stacking; then, for the best few, placing as
 * a careful hand does: the pieces meant for each level largest first, from the edge inward on a fine grid, four ways to
 * turn a handle; then whatever still fits, the worthiest for its room first. The best load is kept. Null where no shelves
 * can be stacked.
 */
export function loadFairly(request: LoadRequest): LoadPlan | null {
  const heaps = postHeaps(request);
  const worth = importance(request);
  const worthOf = (plan: LoadPlan): number => {
    const kinds = new Map(request.ware.map((ware) => [ware.name, worth(ware)]));
    return plan.levels.flatMap((level) => level.placements).reduce((sum, each) => sum + (kinds.get(each.ware) ?? 0), 0);
  };
  const poured = stackings(request, laidShelves(request), heaps, stacksOf(heaps))
    .map((stacking) => pourIn(request, heaps, stacking, USUAL_FILL))
    .sort((a, b) => b.worth - a.worth);
  let best: LoadPlan | null = null;
  let loads = 0;
  for (const each of poured) {
    if (loads === STACKINGS_LOADED) break;
    const plan = loadLevels(request, heaps, each);
    if (!plan) continue;
    loads++;
    if (!best || worthOf(plan) > worthOf(best)) best = plan;
  }
  return best;
}

function loadLevels(
  request: LoadRequest,
  heaps: readonly PostHeap[],
  { stacking, share }: PouredLevels,
): LoadPlan | null {
  const { rules } = request;
  const usedHeaps = stacking.flatMap(({ stack }) => stack.heaps.map((heap) => heaps[heap]!));
  const places = postPlaces(
    request,
    stacking.map((level) => level.laid),
    usedHeaps,
  );
  if (!places) return null;
  const bench = new Bench(request);
  const loaded = stacking.map((stacked, l): LoadedLevel => {
    const above = stacking[l + 1];
    const post = above ? widestPost(above.stack.heaps.map((heap) => heaps[heap]!)) : null;
    const level = new LevelByHand(request, stacked.laid, stacked.topMm, stacked.clearMm, places, post);
    return { level, stack: stacked.stack };
  });
  const room = (ware: Ware): number => roomMm2(ware, rules.gapMm);
  const fill = (level: LevelByHand, kinds: readonly Ware[], most: (ware: Ware) => number): void => {
    for (const ware of kinds) {
      for (let n = Math.min(bench.count(ware), most(ware)); n > 0 && level.setDown(ware, TOUCH); n--) bench.take(ware);
    }
  };
  const worth = importance(request);
  const largestFirst = request.ware.toSorted((a, b) => room(b) - room(a));
  const worthiestFirst = request.ware.toSorted((a, b) => worth(b) / room(b) - worth(a) / room(a));
  const lowestFirst = loaded.map((each, l) => ({ ...each, l })).sort((a, b) => a.level.clearMm - b.level.clearMm);
  for (const { level, l } of lowestFirst)
    fill(level, largestFirst, (ware) => Math.ceil((share[l]!.get(ware) ?? 0) - 0.01));
  for (const { level } of lowestFirst) {
    fill(
      level,
      worthiestFirst.filter((ware) => fullHeightMm(ware) <= level.clearMm),
      () => Number.POSITIVE_INFINITY,
    );
  }
  for (const { level } of loaded) for (const ware of level.takeOffWhatTips()) bench.putBack(ware);
  while (loaded.at(-1)?.level.standing.length === 0) loaded.pop();
  return loaded.length === 0 ? null : writeDown(loaded, places, heaps, bench);
}
