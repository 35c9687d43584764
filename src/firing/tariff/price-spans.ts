import { type Tariff, type TariffSlot, WEEKDAYS } from "./tariff.ts";
import { MINUTES_A_DAY, minutesOfDay } from "./time-of-day.ts";
import { clockMove, type WallTime, wallTime } from "./zone-clock.ts";

const MINUTE_MS = 60_000;
const DAY_MS = MINUTES_A_DAY * MINUTE_MS;

/** A stretch of time at one price. */
export interface PriceSpan {
  readonly fromMs: number;
  readonly toMs: number;
  /** Place of the slot in the tariff, or −1 outside every slot. */
  readonly slot: number;
  readonly pricePerKWh: number;
}

/**
 * The prices between two instants, in order, without gaps: cut where the zone's clock passes a slot's edge or midnight,
 * and where the clock itself is moved.
 */
export function priceSpans(tariff: Tariff, fromMs: number, toMs: number): PriceSpan[] {
  const slots = (tariff.slots ?? []).map(readySlot);
  const edges = [...new Set([...slots.flatMap(({ fromMs: a, toMs: b }) => [a, b]), DAY_MS])].sort((a, b) => a - b);
  const spans: PriceSpan[] = [];
  let at = fromMs;
  while (at < toMs) {
    const wall = wallTime(tariff.timeZone, at);
    const slot = slots.findIndex((each) => holds(each, wall));
    const edge = edges.find((each) => each > wall.msOfDay) ?? DAY_MS;
    const ahead = at + edge - wall.msOfDay;
    const next = Math.min(toMs, clockMove(tariff.timeZone, at, ahead) ?? ahead);
    const last = spans.at(-1);
    if (last?.slot === slot) spans[spans.length - 1] = { ...last, toMs: next };
    else {
      const pricePerKWh = tariff.slots?.[slot]?.pricePerKWh ?? tariff.pricePerKWh;
      spans.push({ fromMs: at, toMs: next, slot, pricePerKWh });
    }
    at = next;
  }
  return spans;
}

interface ReadySlot {
  readonly fromMs: number;
  readonly toMs: number;
  readonly weekdays: readonly boolean[] | null;
  readonly months: readonly number[] | null;
}

function readySlot(slot: TariffSlot): ReadySlot {
  return {
    fromMs: minutesOfDay(slot.from, "from") * MINUTE_MS,
    toMs: minutesOfDay(slot.to, "to") * MINUTE_MS,
    weekdays: slot.weekdays ? WEEKDAYS.map((day) => slot.weekdays?.includes(day) ?? false) : null,
    months: slot.months ?? null,
  };
}

function holds(slot: ReadySlot, wall: WallTime): boolean {
  const { fromMs, toMs } = slot;
  if (fromMs < toMs) return wall.msOfDay >= fromMs && wall.msOfDay < toMs && isOn(slot, wall);
  if (wall.msOfDay >= fromMs) return isOn(slot, wall);
  return wall.msOfDay < toMs && isOn(slot, dayBefore(wall));
}

const isOn = ({ weekdays, months }: ReadySlot, { weekday, month }: Pick<WallTime, "weekday" | "month">): boolean =>
  (weekdays === null || weekdays[weekday] === true) && (months === null || months.includes(month));

function dayBefore({ year, month, day, weekday }: WallTime): Pick<WallTime, "weekday" | "month"> {
  return { weekday: (weekday + 6) % 7, month: new Date(Date.UTC(year, month - 1, day - 1)).getUTCMonth() + 1 };
}
