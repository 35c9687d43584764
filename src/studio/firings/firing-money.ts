import { firingCost } from "../../firing/tariff/firing-cost.ts";
import type { FiringPower } from "../../firing/tariff/firing-energy.ts";
import type { Tariff } from "../../firing/tariff/tariff.ts";
import type { FiringRecord } from "../records/firing-record.ts";
import type { LoadRecord } from "../records/load-record.ts";
import type { StudioSettings } from "../records/studio-settings.ts";
import { meteredKWh } from "./firing-evidence.ts";

/** What a firing cost, in the studio's money. Null is not known: no tariff, no price, nothing foretold or read. */
export interface FiringMoney {
  readonly kWh: number | null;
  /** Read off the meter, or only foretold. */
  readonly kWhFrom: "meter" | "foretold" | null;
  readonly energy: number | null;
  /** Its share of a set of elements. */
  readonly elements: number | null;
  /** Its share of the shelves it was fired on, level by level from the floor. */
  readonly shelves: readonly number[] | null;
  /** The sum of what is known; null where nothing is. */
  readonly total: number | null;
  /** What is not known and why, in sentences. */
  readonly notes: readonly string[];
}

/**
 * What a firing cost: the energy its meter ran, priced by the tariff's slots at the hours it was drawn in; a share of
 * the elements and shelves that each firing wears.
 *
 * @param load its load; null where it is not known
 */
export function firingMoney(
  firing: FiringRecord,
  load: Pick<LoadRecord, "plan"> | null,
  settings: StudioSettings,
): FiringMoney {
  const metered = meteredKWh(firing);
  const kWh = metered ?? firing.foretold?.kWh ?? null;
  const notes: string[] = [];
  const energy = energyMoney(firing, kWh, settings.tariff, notes);
  const { elementSetPrice, elementLifeFirings, shelfPrice, shelfLifeFirings } = settings;
  const elements = worn(elementSetPrice, elementLifeFirings);
  if (elements === null) notes.push("Wear of elements is left out: give their price and how many firings they last.");
  const shelf = worn(shelfPrice, shelfLifeFirings);
  if (shelf === null) notes.push("Wear of shelves is left out: give their price and how many firings they last.");
  const shelves = shelf === null || !load?.plan ? null : load.plan.levels.map(() => shelf);
  const parts = [energy, elements, ...(shelves ?? [])].filter((each) => each !== null);
  return {
    ...{ kWh, kWhFrom: metered !== null ? "meter" : kWh === null ? null : "foretold" },
    ...{ energy, elements, shelves, notes },
    total: parts.length === 0 ? null : parts.reduce((sum, each) => sum + each, 0),
  };
}

const worn = (price: number | undefined, lifeFirings: number | undefined): number | null =>
  price === undefined || lifeFirings === undefined ? null : price / lifeFirings;

function energyMoney(
  firing: FiringRecord,
  kWh: number | null,
  tariff: Tariff | undefined,
  notes: string[],
): number | null {
  if (tariff === undefined || kWh === null) {
    notes.push(
      tariff === undefined
        ? "Energy is left out: give what electricity costs."
        : "Energy is left out: read the meter before and after a firing.",
    );
    return null;
  }
  const start = firing.startedAt ?? firing.plannedStartAt;
  const power = powerOf(firing, kWh);
  if (start !== undefined && power !== null) return firingCost(power, tariff, start).total;
  if ((tariff.slots ?? []).length === 0) return kWh * tariff.pricePerKWh;
  notes.push("Energy is left out: when it was drawn is not known, and the tariff asks.");
  return null;
}

/** The power a firing drew: as it was foretold hour by hour, made to match the meter; else even until it shut off. */
function powerOf({ foretold, startedAt, shutOffAt }: FiringRecord, kWh: number): FiringPower | null {
  const hourly = foretold?.kWhEachHour;
  if (foretold && hourly && hourly.length > 0) {
    const sum = hourly.reduce((total, each) => total + each, 0);
    const minutes = [0, ...hourly.map((_, hour) => (hour + 1) * 60)];
    const last = Math.max(0.02, foretold.hours - (hourly.length - 1));
    minutes[hourly.length] = (hourly.length - 1 + Math.min(1, last)) * 60;
    const scale = sum > 0 ? kWh / sum : 0;
    const watts = hourly.map((each, hour) => {
      const span = ((minutes[hour + 1] as number) - (minutes[hour] as number)) / 60;
      return (1000 * each * scale) / span;
    });
    return { minutes, watts: [0, ...watts] };
  }
  if (startedAt === null || shutOffAt === undefined) return null;
  const hours = (Date.parse(shutOffAt) - Date.parse(startedAt)) / 3_600_000;
  return hours > 0 ? { minutes: [0, hours * 60], watts: [0, (1000 * kWh) / hours] } : null;
}
