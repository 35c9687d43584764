import { energyUntil, type FiringEnergy, type FiringPower, firingEnergy } from "./firing-energy.ts";
import { instantOf } from "./instant.ts";
import { type PriceSpan, priceSpans } from "./price-spans.ts";
import type { Tariff } from "./tariff.ts";
import { offsetMs } from "./zone-clock.ts";

const HOUR_MS = 3_600_000;

/** What a firing draws in one slot of the tariff. */
export interface SlotCost {
  /** The slot's name, or null outside every slot. */
  readonly slot: string | null;
  readonly kWh: number;
  readonly pricePerKWh: number;
  readonly cost: number;
}

/** What a firing costs. Sums are in the tariff's own money. */
export interface FiringCost {
  readonly total: number;
  readonly energyCost: number;
  /** What its highest mean power adds to the bill: nothing where the period has seen a higher one. */
  readonly demandCost: number;
  readonly fixedCost: number;
  readonly kWh: number;
  /** Only the slots it draws in, in the tariff's order; outside every slot last. */
  readonly slots: readonly SlotCost[];
  /** The highest mean over one of the meter's windows, other load included, kW; null without a demand charge. */
  readonly peakKW: number | null;
  /** Carbon dioxide, or null where the tariff does not say for a slot that is used. */
  readonly carbonKg: number | null;
}

/**
 * What a firing costs that starts at a moment: Σ energy × price, each slot's energy cut exactly at the slot's edges by
 * the zone's own clock, plus the demand charge (price × highest mean kW over the meter's windows), plus its share of the
 * fixed charge. The form is common practice, from utilities' pages on time-of-use tariffs.
 *
 * @param startIso ISO 8601; without an offset by the tariff's own clock
 * @throws BadInput for a start that is no instant, or power that is none
 */
export function firingCost(firing: FiringPower, tariff: Tariff, startIso: string): FiringCost {
  const energy = firingEnergy(firing);
  const startMs = instantOf(startIso, tariff.timeZone, "start");
  return costFrom(energy, tariff, startMs, priceSpans(tariff, startMs, startMs + lengthMs(energy)));
}

export const lengthMs = ({ hours }: FiringEnergy): number => (hours.at(-1) as number) * HOUR_MS;

/** The same for prices already cut into spans, which must cover the firing: for trying many starts. */
export function costFrom(
  energy: FiringEnergy,
  tariff: Tariff,
  startMs: number,
  spans: readonly PriceSpan[],
): FiringCost {
  const drawn = new Float64Array((tariff.slots ?? []).length + 1);
  const endMs = startMs + lengthMs(energy);
  let before = 0;
  for (const span of spans) {
    if (span.toMs <= startMs || span.fromMs >= endMs) continue;
    const until = energyUntil(energy, (span.toMs - startMs) / HOUR_MS);
    const place = span.slot < 0 ? drawn.length - 1 : span.slot;
    drawn[place] = (drawn[place] as number) + until - before;
    before = until;
  }
  const slots = [...drawn]
    .map((kWh, place): SlotCost => {
      const slot = tariff.slots?.[place];
      const pricePerKWh = slot?.pricePerKWh ?? tariff.pricePerKWh;
      return { slot: slot?.name ?? null, kWh, pricePerKWh, cost: kWh * pricePerKWh };
    })
    .filter(({ kWh }) => kWh > 0);
  const energyCost = slots.reduce((sum, slot) => sum + slot.cost, 0);
  const demand = tariff.demand;
  const peakKW = demand ? highestMeanKW(energy, tariff, startMs, demand.windowMin) + (demand.otherLoadKW ?? 0) : null;
  const demandCost = demand ? demand.pricePerKW * Math.max(0, (peakKW ?? 0) - (demand.alreadyKW ?? 0)) : 0;
  const fixedCost = tariff.fixed ? tariff.fixed.price * tariff.fixed.share : 0;
  const kWh = energy.kWh.at(-1) as number;
  const total = energyCost + demandCost + fixedCost;
  return { total, energyCost, demandCost, fixedCost, kWh, slots, peakKW, carbonKg: carbonKg(tariff, drawn) };
}

function carbonKg(tariff: Tariff, drawn: Float64Array): number | null {
  let grams = 0;
  for (const [place, kWh] of drawn.entries()) {
    if (kWh === 0) continue;
    const each = place === drawn.length - 1 ? tariff.carbonGPerKWh : tariff.slots?.[place]?.carbonGPerKWh;
    if (each === undefined) return null;
    grams += kWh * each;
  }
  return grams / 1000;
}

/** The highest mean power over the meter's windows, which follow one another from the full hour of the local clock. */
function highestMeanKW(energy: FiringEnergy, tariff: Tariff, startMs: number, windowMin: number): number {
  const windowMs = windowMin * 60_000;
  const ahead = offsetMs(tariff.timeZone, startMs);
  const endMs = startMs + lengthMs(energy);
  let highest = 0;
  let before = 0;
  for (let at = Math.floor((startMs + ahead) / windowMs) * windowMs - ahead; at < endMs; at += windowMs) {
    const until = energyUntil(energy, (at + windowMs - startMs) / HOUR_MS);
    highest = Math.max(highest, (until - before) / (windowMin / 60));
    before = until;
  }
  return highest;
}
