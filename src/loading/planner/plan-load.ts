import { type Chance, seededChance } from "../../measures/seeded-chance.ts";
import type { LoadPlan } from "../load-plan.ts";
import type { LoadRequest } from "../load-request.ts";
import { settleEvenly } from "./evenness.ts";
import { type Impossible, whyImpossible } from "./impossible.ts";
import { legalColumns } from "./legal-columns.ts";
import { LoadSearch, type LoadSnapshot } from "./load-search.ts";
import { type PlacementPlace, type PlanAround, planAround } from "./plan-around.ts";
import { searchAround } from "./search-around.ts";
import { structures } from "./structure.ts";
import { structureFrame } from "./structure-frame.ts";
import { type LoadTask, loadTask } from "./task.ts";
import { writePlan } from "./write-plan.ts";

/** What the search says while it looks: the best load so far. */
export interface PlanProgress {
  readonly value: number;
  readonly pieces: number;
  /** What the search maximises: value, with every piece that must fire above all that need not. */
  readonly worth: number;
  readonly work: number;
}

export interface PlanOptions {
  /** The same seed and work limit give the same plan. */
  readonly seed: number;
  /** How much to look: pieces measured against their neighbours, counted, so that a result repeats on any machine. */
  readonly workLimit: number;
  /**
   * Told of every better load. `plan` writes it down, at once or later: a whole plan that keeps every rule, though not yet
   * settled evenly. Writing takes longer than finding: ask for no more of them than anybody will see.
   */
  readonly onProgress?: (progress: PlanProgress, plan: () => LoadPlan) => void;
  /** Asked often; true ends the search with the best so far. */
  readonly shouldStop?: () => boolean;
  /** A plan whose shelves and posts stay as they are, and which of its pieces stay too; all else is planned anew. */
  readonly around?: PlanAround;
}

export type PlanOutcome =
  | {
      readonly kind: "planned";
      readonly plan: LoadPlan;
      /** Where the pins of `around` are in this plan, in the order given; none where there were none. */
      readonly pins: readonly PlacementPlace[];
    }
  | { readonly kind: "impossible"; readonly reasons: readonly Impossible[] };

// Ways to stack the kiln: so many are looked at, so many filled at most, and filling takes no more than this share of the work.
const STRUCTURES_KEPT = 60;
const STRUCTURES_FILLED = 32;
const SHARE_OF_FILLING = 0.15;
// Then the better half is searched on, and of that the better half again: the share of the remaining work for each round.
const ROUNDS: readonly { readonly searches: number; readonly share: number }[] = [
  { searches: 8, share: 0.2 },
  { searches: 4, share: 0.3 },
  { searches: 2, share: 0.5 },
  { searches: 1, share: 1 },
];

/**
 * Plans one load: which of the waiting pieces go in, on which shelves at which heights, on which posts, where each
 * stands. Keeps every rule of the request; brings the greatest value it finds, pieces that must fire before all others.
 * Around a given plan, its furniture and its kept pieces stay as they are, whatever rules they break among themselves; all
 * that is set down beside them keeps every rule.
 *
 * @param request a read load request
 * @param options seed and limits
 * @returns a plan, or why no load of it can be made (never around a given plan)
 * @throws BadInput where the given plan does not go with the request
 */
export function planLoad(request: LoadRequest, options: PlanOptions): PlanOutcome {
  const around = planAround(request, options.around);
  const task = loadTask(request);
  if (request.ware.length === 0 && !around) {
    return { kind: "planned", plan: writePlan(task, null, options.seed), pins: [] };
  }
  const chance = seededChance(options.seed);
  const searches: LoadSearch[] = [];
  let best: LoadSnapshot | null = null;
  let work = 0;
  const everything = task.worth.reduce((sum, worth, kind) => sum + worth * (task.counts[kind] as number), 0);
  const stop = (): boolean => (best && best.worth > everything * (1 - 1e-12)) || (options.shouldStop?.() ?? false);
  const offer = (search: LoadSearch): void => {
    const found = search.best;
    if (!found || (best && found.worth <= best.worth + 1e-9)) return;
    best = found;
    const progress = { value: worthOfLoad(task, found), pieces: piecesOf(found), worth: found.worth, work };
    options.onProgress?.(progress, () => writePlan(task, found, options.seed));
  };

  for (const search of around ? searchAround(task, around, chance) : freshSearches(task, chance)) {
    search.fill(() => best !== null && stop());
    search.noteBest();
    work += search.work;
    offer(search);
    searches.push(search);
    if (searches.length >= STRUCTURES_FILLED || stop() || work > options.workLimit * SHARE_OF_FILLING) break;
  }
  if (searches.length === 0) return { kind: "impossible", reasons: whyImpossible(task) };

  const searchOn = (search: LoadSearch, until: number): void => {
    while (work < until && !search.complete && !stop()) {
      const before = search.work;
      const better = search.step();
      // A refused move costs a little too, or a full kiln would be searched for ever.
      work += search.work - before + 1;
      if (better) offer(search);
    }
  };
  const worthOf = (search: LoadSearch): number => search.best?.worth ?? 0;
  for (const round of ROUNDS) {
    searches.sort((a, b) => worthOf(b) - worthOf(a));
    searches.length = Math.min(searches.length, round.searches);
    const share = ((options.workLimit - work) * round.share) / searches.length;
    for (const search of searches) searchOn(search, work + share);
  }

  const even = settleEvenly(task, best as unknown as LoadSnapshot, chance);
  if (!around && piecesOf(even) === 0) return { kind: "impossible", reasons: whyImpossible(task) };
  return { kind: "planned", plan: writePlan(task, even, options.seed), pins: around?.pins ?? [] };
}

/** Ways to stack the kiln, the best ranked first, each ready to be filled. */
function* freshSearches(task: LoadTask, chance: Chance): Generator<LoadSearch> {
  for (const structure of structures(task, STRUCTURES_KEPT)) {
    const columns = legalColumns(task, structure);
    if (columns.length === 0) continue;
    const chosen = columns[chance.below(columns.length)] as (typeof columns)[number];
    yield new LoadSearch(task, structureFrame(task, structure, chosen), chance);
  }
}

function worthOfLoad(task: LoadTask, load: LoadSnapshot): number {
  let value = 0;
  for (const level of load.levels) for (const kind of level.kindOf) value += task.request.ware[kind]?.value ?? 0;
  return value;
}

const piecesOf = (load: LoadSnapshot): number => load.levels.reduce((sum, level) => sum + level.kindOf.length, 0);
