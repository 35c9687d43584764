import type { FiringRecord } from "../records/firing-record.ts";
import type { LoadRecord } from "../records/load-record.ts";
import type { StudioSettings } from "../records/studio-settings.ts";
import { type FiringMoney, firingMoney } from "./firing-money.ts";
import { pieceLitres } from "./piece-litres.ts";
import { sharedCents } from "./shared-cents.ts";

/** One piece's fair share of what a firing cost, in hundredths of the studio's money. */
export interface PieceShare {
  readonly level: number;
  readonly placement: number;
  readonly ware: string;
  readonly wareId: string | null;
  /** The space it takes, air about it included, litres. */
  readonly litres: number;
  readonly cents: number;
}

/** A firing's cost and its pieces' shares, which sum to it exactly. */
export interface CostShares {
  readonly money: FiringMoney;
  /** The whole cost in hundredths. */
  readonly cents: number;
  readonly pieces: readonly PieceShare[];
  /** The same by kind of piece. */
  readonly wares: readonly {
    readonly ware: string;
    readonly wareId: string | null;
    readonly count: number;
    readonly litres: number;
    readonly cents: number;
  }[];
}

/**
 * What each piece of a firing's load is to carry of its cost: energy and elements by the space it takes of all, each
 * shelf's wear by the space on that shelf. Every hundredth is somebody's: the shares sum to the cost exactly.
 */
export function firingCostShares(firing: FiringRecord, load: LoadRecord, settings: StudioSettings): CostShares {
  const money = firingMoney(firing, load, settings);
  const wares = new Map(load.request.ware.map((each) => [each.name, each]));
  const sources = new Map(load.sources.map(({ ware, wareId }) => [ware, wareId]));
  const standing = (load.plan?.levels ?? []).flatMap(({ placements }, level) =>
    placements.map(({ ware }, placement) => {
      const piece = wares.get(ware);
      const litres = piece === undefined ? 0 : pieceLitres(piece, load.request.rules);
      return { level, placement, ware, wareId: sources.get(ware) ?? null, litres };
    }),
  );
  const litres = standing.reduce((sum, each) => sum + each.litres, 0);
  const byLevel = (level: number): number =>
    standing.reduce((sum, each) => sum + (each.level === level ? each.litres : 0), 0);
  const common = (money.energy ?? 0) + (money.elements ?? 0);
  const empty = (money.shelves ?? []).reduce((sum, each, level) => sum + (byLevel(level) > 0 ? 0 : each), 0);
  const fair = standing.map((each) => {
    const onShelf = byLevel(each.level);
    const shelf = onShelf > 0 ? ((money.shelves?.[each.level] ?? 0) * each.litres) / onShelf : 0;
    // A shelf that held nothing is everybody's.
    return litres > 0 ? ((common + empty) * each.litres) / litres + shelf : 0;
  });
  const cents = Math.round(100 * (money.total ?? 0));
  const shares = sharedCents(standing.length === 0 ? 0 : cents, fair);
  const pieces = standing.map((each, i): PieceShare => ({ ...each, cents: shares[i] ?? 0 }));
  return { money, cents, pieces, wares: byWare(pieces) };
}

function byWare(pieces: readonly PieceShare[]): CostShares["wares"] {
  const wares = new Map<string, CostShares["wares"][number]>();
  for (const { ware, wareId, litres, cents } of pieces) {
    const there = wares.get(ware) ?? { ware, wareId, count: 0, litres: 0, cents: 0 };
    wares.set(ware, {
      ...there,
      ...{ count: there.count + 1, litres: there.litres + litres, cents: there.cents + cents },
    });
  }
  return [...wares.values()];
}
