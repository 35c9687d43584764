import type { Chance } from "../../measures/seeded-chance.ts";
import { levelHeats } from "../firings/level-heat.ts";
import type { FaultName, Grade } from "../records/faults.ts";
import type { FiringRecord } from "../records/firing-record.ts";
import type { LoadRecord } from "../records/load-record.ts";
import type { FiredKind } from "./worn-kiln.ts";
import { RUNNING_GLAZES } from "./year-ware.ts";

/** How a piece came out, as `judge-pieces` is told. */
export interface YearOutcome {
  readonly level: number;
  readonly placement: number;
  readonly grade: Grade;
  readonly faults: readonly FaultName[];
}

type Happens = readonly [odds: number, grade: Grade, ...faults: FaultName[]];

// How often what happens, out of one. Invented: few pieces are lost in a kiln that is looked after.
const BISQUE: readonly Happens[] = [
  [0.008, "lost", "burst"],
  [0.015, "second", "drying crack"],
];
const GLAZE: readonly Happens[] = [
  [0.03, "second", "pinholes"],
  [0.02, "second", "crawling"],
  [0.008, "lost", "dunting"],
  [0.012, "second", "kiln debris"],
];
/** So far over or under what its cone wants, a shelf shows it on the ware. */
const SHOWS_C = 10;
const TOO_HOT: readonly Happens[] = [
  [0.06, "lost", "running", "stuck"],
  [0.2, "second", "running"],
];
const TOO_COOL: readonly Happens[] = [[0.2, "second", "under-fired"]];

/** Judges a load by what its shelves got and by chance; only pieces that are not good. */
export function judged(firing: FiringRecord, load: LoadRecord, kind: FiredKind, chance: Chance): YearOutcome[] {
  const overC = new Map(levelHeats(firing).map((each) => [each.level, each.overC ?? 0]));
  const glazes = new Map(load.request.ware.map(({ name, glaze }) => [name, glaze ?? ""]));
  return (load.plan?.levels ?? []).flatMap(({ placements }, level) =>
    placements.flatMap(({ ware }, placement): YearOutcome[] => {
      const over = overC.get(level) ?? 0;
      const runs = over > SHOWS_C && RUNNING_GLAZES.has(glazes.get(ware) ?? "");
      const glazed = [...(runs ? TOO_HOT : []), ...(over < -SHOWS_C ? TOO_COOL : []), ...GLAZE];
      const drawn = drawnOf(kind === "bisque" ? BISQUE : glazed, chance.next());
      return drawn === null ? [] : [{ level, placement, ...drawn }];
    }),
  );
}

function drawnOf(may: readonly Happens[], draw: number): Pick<YearOutcome, "grade" | "faults"> | null {
  let left = draw;
  for (const [odds, grade, ...faults] of may) {
    if (left < odds) return { grade, faults };
    left -= odds;
  }
  return null;
}
