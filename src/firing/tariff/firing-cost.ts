import { type EnergyUse, energyUse, lastUse, type PowerCurve, usedBy } from "./energy-use.ts";
import { evenStretches } from "./local-clock.ts";
import { type PricePiece, pricePieces } from "./price-pieces.ts";
import type { Tariff } from "./tariff.ts";

const MINUTE_MS = 60_000;

/** Energy and its price in one slot. */
export interface SlotCost {
  /** As the bill calls it; "otherwise" outside every slot. */
  readonly name: string;
  readonly kWh: number;
  readonly cost: number;
}

/** What a firing costs from a given start. In the tariff's currency. */
export interface FiringCost {
  readonly startMs: number;
  readonly kWh: number;
  readonly energyCost: number;
  /** Added to the bill's charge for its highest draw; 0 where another day is higher. */
  readonly demandCost: number;
  readonly fixedCost: number;
  readonly cost: number;
  /** The slots used, the one with most energy first. */
  readonly slots: readonly SlotCost[];
  /** The highest mean draw over the tariff's window, other load included, and when it began; null without a demand charge. */
  readonly highestDraw: { readonly kW: number; readonly fromMs: number } | null;
  /** Carbon dioxide, or null where the tariff does not say for a slot that is used. */
  readonly carbonKg: number | null;
}

/**
 * What a firing costs: Σ energy in each slot × its price + the charge for the highest draw + her share of what is fixed
 * (the formula of time-of-use bills: utilities' explainer pages, common practice).
 *
 * @param power the firing's draw, minutes from its start
 * @param startMs when it starts, milliseconds since 1970 in universal time
 */
export function firingCost(power: PowerCurve, startMs: number, tariff: Tariff): FiringCost {
  const use = energyUse(power);
  const endMs = startMs + lastUse(use) * MINUTE_MS;
  return costOf(use, startMs, tariff, pricePieces(tariff, startMs, endMs));
}

/** The same, for energy already added up and prices already cut. */
export function costOf(use: EnergyUse, startMs: number, tariff: Tariff, pieces: readonly PricePiece[]): FiringCost {
  const slots = new Map<number, { kWh: number; cost: number }>();
  let carbonG: number | null = 0;
  for (const { fromMs, toMs, slot, pricePerKWh, carbonGPerKWh } of pieces) {
    const kWh = usedBy(use, (toMs - startMs) / MINUTE_MS) - usedBy(use, (fromMs - startMs) / MINUTE_MS);
    if (kWh <= 0) continue;
    const sum = slots.get(slot) ?? { kWh: 0, cost: 0 };
    slots.set(slot, { kWh: sum.kWh + kWh, cost: sum.cost + kWh * pricePerKWh });
    carbonG = carbonG === null || carbonGPerKWh === null ? null : carbonG + kWh * carbonGPerKWh;
  }
  const rows = [...slots].map(([slot, sum]) => ({ name: tariff.slots[slot]?.name ?? "otherwise", ...sum }));
  const energyCost = rows.reduce((sum, row) => sum + row.cost, 0);
  const highestDraw = tariff.demand ? highest(use, startMs, tariff, tariff.demand) : null;
  const above = Math.max(0, (highestDraw?.kW ?? 0) - (tariff.demand?.alreadyKW ?? 0));
  const demandCost = above * (tariff.demand?.pricePerKW ?? 0);
  const fixedCost = tariff.fixedPerFiring ?? 0;
  return {
    startMs,
    kWh: rows.reduce((sum, row) => sum + row.kWh, 0),
    energyCost,
    demandCost,
    fixedCost,
    cost: energyCost + demandCost + fixedCost,
    slots: rows.sort((a, b) => b.kWh - a.kWh),
    highestDraw,
    carbonKg: carbonG === null ? null : carbonG / 1000,
  };
}

/** Meters average over windows counted from the full hour on the clock. */
function highest(
  use: EnergyUse,
  startMs: number,
  tariff: Tariff,
  demand: NonNullable<Tariff["demand"]>,
): { kW: number; fromMs: number } {
  const window = demand.windowMin * MINUTE_MS;
  const endMs = startMs + lastUse(use) * MINUTE_MS;
  let most = { kW: Number.NEGATIVE_INFINITY, fromMs: startMs };
  for (const stretch of evenStretches(tariff.timeZone, startMs, endMs)) {
    const offset = stretch.offsetMin * MINUTE_MS;
    const first = Math.floor((stretch.fromMs + offset) / window) * window - offset;
    for (let from = first; from < stretch.toMs; from += window) {
      const kWh = usedBy(use, (from + window - startMs) / MINUTE_MS) - usedBy(use, (from - startMs) / MINUTE_MS);
      const kW = (kWh * 60) / demand.windowMin + (demand.otherLoadKW ?? 0);
      if (kW > most.kW) most = { kW, fromMs: from };
    }
  }
  return most;
}
