import { createRequire } from "node:module";
import type { LoadRequest } from "../../src/loading/load-request.ts";
import { shelfMiddle } from "../../src/loading/solids/furniture-solids.ts";
import type { Ware } from "../../src/ware/ware.ts";
import { type PostHeap, widestPost } from "./furniture-by-hand.ts";
import { fullHeightMm, importance, roomMm2 } from "./plan-by-hand.ts";
import type { Stacking } from "./stackings.ts";

/** A stacking with what the programme would put on each level. */
export interface PouredLevels {
  readonly stacking: Stacking;
  readonly worth: number;
  /** For each level, pieces of each kind, in fractions. */
  readonly share: readonly ReadonlyMap<Ware, number>[];
}

/** The part of HiGHS used here; the package's own types describe its CommonJS file, not the module Node loads. */
interface Highs {
  solve(
    problem: string,
    options: { readonly output_flag: boolean },
  ): { readonly ObjectiveValue: number; readonly Columns: Readonly<Record<string, { readonly Primal?: number }>> };
}
const loadHighs = createRequire(import.meta.url)("highs") as () => Promise<Highs>;
const highs = await loadHighs();

/**
 * What a stacking could hold by a linear programme (HiGHS): pieces poured in fractions onto levels tall enough for them,
 * up to a share of each shelf, for the greatest value.
 *
 * @param fill the share of a shelf that ware is expected to cover
 */
export function pourIn(
  request: LoadRequest,
  heaps: readonly PostHeap[],
  stacking: Stacking,
  fill: number,
): PouredLevels {
  const worth = importance(request);
  const { gapMm } = request.rules;
  const may = request.ware.flatMap((ware, k) =>
    stacking.flatMap((level, l) =>
      fullHeightMm(ware) <= level.clearMm + 1e-9 ? [{ ware, k, l, name: `x_${k}_${l}` }] : [],
    ),
  );
  if (may.length === 0) return { stacking, worth: 0, share: stacking.map(() => new Map()) };
  const rows: string[] = [];
  request.ware.forEach((ware, k) => {
    const names = may.filter((each) => each.k === k).map((each) => each.name);
    if (names.length > 0) rows.push(`${names.join(" + ")} <= ${ware.count}`);
  });
  stacking.forEach((level, l) => {
    const above = stacking[l + 1];
    const post = above ? widestPost(above.stack.heaps.map((heap) => heaps[heap]!)).widthMm + gapMm : 0;
    const area = fill * Math.max(0, shelfMiddle(level.laid.shelf).areaMm2 - 3 * post * post);
    const terms = may
      .filter((each) => each.l === l)
      .map((each) => `${roomMm2(each.ware, gapMm).toFixed(3)} ${each.name}`);
    if (terms.length > 0) rows.push(`${terms.join(" + ")} <= ${area.toFixed(3)}`);
  });
  const objective = may.map((each) => `${worth(each.ware)} ${each.name}`).join("\n + ");
  const subject = rows.map((row, i) => `r${i}: ${row}`).join("\n ");
  const result = highs.solve(`Maximize\n worth: ${objective}\nSubject To\n ${subject}\nEnd\n`, { output_flag: false });
  return {
    stacking,
    worth: result.ObjectiveValue,
    share: stacking.map(
      (_, l) =>
        new Map(may.filter((each) => each.l === l).map((each) => [each.ware, result.Columns[each.name]?.Primal ?? 0])),
    ),
  };
}
