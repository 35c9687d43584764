import { wallTime } from "../../firing/tariff/zone-clock.ts";
import type { FiringRecord } from "../records/firing-record.ts";
import type { LoadRecord } from "../records/load-record.ts";
import type { StudioSettings } from "../records/studio-settings.ts";
import { firingMoney } from "./firing-money.ts";

/** What a month's firings cost. */
export interface MonthCost {
  /** 2026-11, by the tariff's clock; by UTC where there is no tariff. */
  readonly month: string;
  readonly firings: number;
  readonly kWh: number;
  readonly energy: number;
  readonly elements: number;
  readonly shelves: number;
  readonly total: number;
  /** How many of its firings have an energy cost that is not known, and so is missing from the sums. */
  readonly unknown: number;
}

/** What each month's firings cost, the oldest first. Only firings that have started count; months without are left out. */
export function monthCosts(
  firings: readonly FiringRecord[],
  loads: readonly LoadRecord[],
  settings: StudioSettings,
): MonthCost[] {
  const byId = new Map(loads.map((load) => [load.id, load]));
  const zone = settings.tariff?.timeZone ?? "UTC";
  const months = new Map<string, MonthCost>();
  for (const firing of firings) {
    if (firing.startedAt === null) continue;
    const { year, month } = wallTime(zone, Date.parse(firing.startedAt));
    const name = `${year}-${String(month).padStart(2, "0")}`;
    const none = { month: name, firings: 0, kWh: 0, energy: 0, elements: 0, shelves: 0, total: 0, unknown: 0 };
    const there = months.get(name) ?? none;
    const money = firingMoney(firing, firing.loadId === null ? null : (byId.get(firing.loadId) ?? null), settings);
    const shelves = (money.shelves ?? []).reduce((sum, each) => sum + each, 0);
    months.set(name, {
      month: name,
      firings: there.firings + 1,
      kWh: there.kWh + (money.kWh ?? 0),
      energy: there.energy + (money.energy ?? 0),
      elements: there.elements + (money.elements ?? 0),
      shelves: there.shelves + shelves,
      total: there.total + (money.total ?? 0),
      unknown: there.unknown + (money.energy === null ? 1 : 0),
    });
  }
  return [...months.values()].sort((a, b) => (a.month < b.month ? -1 : 1));
}
