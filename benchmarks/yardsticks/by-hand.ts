import type { LoadPlan } from "../../src/loading/load-plan.ts";
import type { LoadRequest } from "../../src/loading/load-request.ts";
import { shelfMiddle } from "../../src/loading/solids/furniture-solids.ts";
import type { Ware } from "../../src/ware/ware.ts";
import {
  type LaidShelf,
  laidShelves,
  postHeaps,
  postPlaces,
  type Stack,
  shelfIsClear,
  stacksOf,
  widestPost,
} from "./furniture-by-hand.ts";
import { LevelByHand, type Touch } from "./level-by-hand.ts";
import { Bench, fullHeightMm, headroomMm, importance, type LoadedLevel, roomMm2, writeDown } from "./plan-by-hand.ts";

const TOUCH: Touch = { ringMm: 8, stepDeg: 8, handleDeg: [180, 90] };
/** How much of the room a hand hopes to fill when she picks what to fire. Common practice, no source. */
const HOPED_FILL = 0.55;

/**
 * The load a potter makes by eye: she picks the worthiest pieces for about as much room as she has, then loads tallest
 * first from the floor up: each shelf's height set by the tallest piece left, each piece at the first place from the edge
 * inward; gaps filled with whatever still fits. Null where she finds no way to stack the shelves.
 */
export function loadByHand(request: LoadRequest): LoadPlan | null {
  const shelves = laidShelves(request);
  const heaps = postHeaps(request);
  const { rules, kiln } = request;
  const places = postPlaces(request, shelves, heaps);
  if (!places || shelves.length === 0) return null;
  const bench = new Bench(request);
  const chosen = pickWorthiest(request, shelves);
  const stock = heaps.map((heap) => heap.count);
  const stacks = stacksOf(heaps);
  const loaded: LoadedLevel[] = [];
  const draw = (stack: Stack): void => {
    for (const heap of stack.heaps) stock[heap] = stock[heap]! - 3;
  };
  const inStock = (stack: Stack): boolean =>
    stack.heaps.every((heap) => stock[heap]! >= 3 * stack.heaps.filter((each) => each === heap).length);

  let under = stacks.find(
    (stack) => stack.totalMm >= rules.floorAirMm && shelfIsClear(request, shelves[0]!, stack.totalMm),
  );
  let base = 0;
  for (const [i, laid] of shelves.entries()) {
    if (!under) break;
    draw(under);
    const topMm = base + under.totalMm + laid.shelf.thicknessMm;
    const lidClear = kiln.chamber.depthMm - rules.lidMm - topMm;
    const tallestFirst = bench.kinds.sort((a, b) => fullHeightMm(b) - fullHeightMm(a));
    const wanted = tallestFirst.filter((ware) => (chosen.get(ware) ?? 0) > 0 && fullHeightMm(ware) <= lidClear);
    const shortest = Math.min(...tallestFirst.map(fullHeightMm));
    const next = shelves[i + 1];
    const air = next ? headroomMm(request, next.shelf.thicknessMm) : 0;
    const above: Stack | undefined =
      next && wanted[0]
        ? stacks.find(
            (stack) =>
              inStock(stack) &&
              stack.totalMm >= fullHeightMm(wanted[0]!) + air &&
              topMm + stack.totalMm + next.shelf.thicknessMm + shortest <= kiln.chamber.depthMm - rules.lidMm &&
              shelfIsClear(request, next, topMm + stack.totalMm),
          )
        : undefined;
    const clear = above ? above.totalMm - air : lidClear;
    const post = above ? widestPost(above.heaps.map((heap) => heaps[heap]!)) : null;
    const level = new LevelByHand(request, laid, topMm, clear, places, post);
    const fill = (kinds: readonly Ware[], most: (ware: Ware) => number): void => {
      for (const ware of kinds) {
        for (let n = most(ware); n > 0 && level.setDown(ware, TOUCH); n--) {
          bench.take(ware);
          chosen.set(ware, (chosen.get(ware) ?? 0) - 1);
        }
      }
    };
    fill(wanted, (ware) => Math.min(bench.count(ware), chosen.get(ware) ?? 0));
    fill(tallestFirst, bench.count);
    for (const ware of level.takeOffWhatTips()) bench.putBack(ware);
    loaded.push({ level, stack: under });
    base = topMm;
    under = above;
    if (bench.kinds.length === 0) break;
  }
  while (loaded.at(-1)?.level.standing.length === 0) loaded.pop();
  return loaded.length === 0 ? null : writeDown(loaded, places, heaps, bench);
}

/** The worthiest pieces for their room, as many as a hand hopes to get in. */
function pickWorthiest(request: LoadRequest, shelves: readonly LaidShelf[]): Map<Ware, number> {
  const { rules, kiln } = request;
  const furniture = shelves.reduce((sum, each) => sum + each.shelf.thicknessMm, 0);
  const usedMm = Math.max(0, kiln.chamber.depthMm - rules.lidMm - rules.floorAirMm - furniture);
  let roomMm3 = HOPED_FILL * usedMm * shelfMiddle(shelves[0]!.shelf).areaMm2;
  const worth = importance(request);
  const room = (ware: Ware): number => roomMm2(ware, rules.gapMm) * (fullHeightMm(ware) + rules.headroomMm);
  const chosen = new Map<Ware, number>();
  for (const ware of [...request.ware].sort((a, b) => worth(b) / room(b) - worth(a) / room(a))) {
    const count = Math.min(ware.count, Math.max(0, Math.ceil(roomMm3 / room(ware))));
    chosen.set(ware, count);
    roomMm3 -= count * room(ware);
  }
  return chosen;
}
