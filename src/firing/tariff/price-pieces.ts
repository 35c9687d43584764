import { evenStretches, wallTime } from "./local-clock.ts";
import { clockMinute, DAYS, type Tariff, type TariffSlot } from "./tariff.ts";

const MINUTE_MS = 60_000;
const DAY_MIN = 24 * 60;

/** A stretch of time of one price. */
export interface PricePiece {
  readonly fromMs: number;
  readonly toMs: number;
  /** The slot's place in the tariff, -1 outside every slot. */
  readonly slot: number;
  readonly pricePerKWh: number;
  readonly carbonGPerKWh: number | null;
}

/**
 * The prices of a span, cut at every edge of a slot on the clock of the tariff's place. Where clocks are put forward an
 * hour's slot is missing, where they are put back it comes twice, as on the meter.
 *
 * @param fromMs,toMs milliseconds since 1970 in universal time
 */
export function pricePieces(tariff: Tariff, fromMs: number, toMs: number): PricePiece[] {
  const edges = [...new Set([0, ...tariff.slots.flatMap((slot) => [clockMinute(slot.from), clockMinute(slot.to)])])];
  const pieces: PricePiece[] = [];
  for (const { fromMs: start, toMs: end, offsetMin } of evenStretches(tariff.timeZone, fromMs, toMs)) {
    const cuts = [start];
    for (let day = wallTime(start, offsetMin).dayNumber; day <= wallTime(end, offsetMin).dayNumber; day++) {
      for (const edge of edges) {
        const ms = (day * DAY_MIN + edge - offsetMin) * MINUTE_MS;
        if (ms > start && ms < end) cuts.push(ms);
      }
    }
    cuts.sort((a, b) => a - b);
    cuts.forEach((cut, i) => {
      pieces.push(priceOf(tariff, cut, cuts[i + 1] ?? end, offsetMin));
    });
  }
  return merged(pieces);
}

function priceOf(tariff: Tariff, fromMs: number, toMs: number, offsetMin: number): PricePiece {
  const slot = tariff.slots.findIndex((each) => isIn(each, (fromMs + toMs) / 2, offsetMin));
  const found = tariff.slots[slot];
  return {
    fromMs,
    toMs,
    slot,
    pricePerKWh: found?.pricePerKWh ?? tariff.otherwisePerKWh,
    carbonGPerKWh: (found ? found.carbonGPerKWh : tariff.otherwiseCarbonGPerKWh) ?? null,
  };
}

/** A slot that runs past midnight belongs to the day and month on which it began. */
function isIn(slot: TariffSlot, ms: number, offsetMin: number): boolean {
  const from = clockMinute(slot.from);
  const to = clockMinute(slot.to);
  const { minuteOfDay } = wallTime(ms, offsetMin);
  const overnight = to < from;
  const wholeDay = to === from;
  const after = minuteOfDay >= from;
  const before = minuteOfDay < to;
  if (!wholeDay && !(overnight ? after || before : after && before)) return false;
  const began = overnight && before ? ms - DAY_MIN * MINUTE_MS : ms;
  const { weekday, month } = wallTime(began, offsetMin);
  const day = DAYS[weekday] as (typeof DAYS)[number];
  return (slot.days?.includes(day) ?? true) && (slot.months?.includes(month) ?? true);
}

function merged(pieces: readonly PricePiece[]): PricePiece[] {
  const joined: PricePiece[] = [];
  for (const piece of pieces) {
    const last = joined.at(-1);
    if (last && last.slot === piece.slot && last.toMs === piece.fromMs) {
      joined[joined.length - 1] = { ...last, toMs: piece.toMs };
    } else joined.push(piece);
  }
  return joined;
}
