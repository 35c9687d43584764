import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { equivalentC } from "../../firing/heat-work/ladder-position.ts";
import type { Programme } from "../../firing/programme/programme.ts";
import { checkPlan } from "../../loading/checker/check-plan.ts";
import { readLoadPlan } from "../../loading/read-load-plan.ts";
import { readLoadRequest } from "../../loading/read-load-request.ts";
import { type StudioInUse, studioInUse } from "../../store/testing/studio-in-use.ts";
import { firingCostShares } from "../firings/cost-shares.ts";
import { meteredKWh } from "../firings/firing-evidence.ts";
import { foretellLoad } from "../firings/foretold-record.ts";
import { monthCosts } from "../firings/month-costs.ts";
import { type FiringAgainst, howFarOff, predictedAgainstActual } from "../firings/predicted-against-actual.ts";
import { upkeepDue } from "../firings/upkeep-due.ts";
import type { FiringRecord } from "../records/firing-record.ts";
import type { LoadRecord } from "../records/load-record.ts";
import { type KeptYear, keptYear } from "./testing/kept-year.ts";
import { FED_FAULTS, fedReadings, watchedFaults, withFault } from "./testing/watched-year.ts";
import { liveYear, type TrueFired, type YearTruth } from "./year-studio.ts";

const BEGINS = "2026-01-05T00:00:00.000Z";
let studio: StudioInUse;
let truth: YearTruth;
let year: KeptYear;
/** Each firing as it was foretold by what was known then, and by a planner that never learns. */
let learned: FiringAgainst[];
let never: FiringAgainst[];

beforeAll(async () => {
  studio = await studioInUse();
  const before = process.cpuUsage();
  truth = await liveYear({ store: studio.store, beginsAt: BEGINS, seed: 1 });
  year = await keptYear(studio.store);
  const { user, system } = process.cpuUsage(before);
  console.log(`${truth.fired.length} firings lived in ${((user + system) / 1e6).toFixed(0)} s of computing`);
  learned = predictedAgainstActual(year.firings, year.readings);
  never = predictedAgainstActual(year.firings.map(asDescribed), year.readings);
}, 600_000);
afterAll(() => studio.end());

const loadOf = ({ loadId }: FiringRecord): LoadRecord => year.loads.find(({ id }) => id === loadId) as LoadRecord;
function asDescribed(firing: FiringRecord): FiringRecord {
  const programme = firing.programme as Programme;
  return { ...firing, foretold: foretellLoad({ load: loadOf(firing), programme, calibration: null }).foretold };
}

describe("a year of an invented studio, lived by the commands", () => {
  test("is a year: thirty firings or so, every load by its rules", () => {
    expect(truth.fired.length).toBeGreaterThanOrEqual(26);
    expect(truth.fired.length).toBeLessThanOrEqual(42);
    const days = (Date.parse(truth.endsAt) - Date.parse(BEGINS)) / 86_400_000;
    expect(days).toBeGreaterThan(335);
    expect(days).toBeLessThan(370);
    expect(year.firings.map(({ state }) => state)).toEqual(truth.fired.map(() => "finished"));
    for (const load of year.loads) {
      const request = readLoadRequest(load.request);
      expect(checkPlan(request, readLoadPlan(load.plan, request)), load.name).toEqual([]);
    }
  });

  test("is foretold better by what it taught: the last ten against the first three, and against never learning", () => {
    const [first, last, unlearned] = [learned.slice(0, 3), learned.slice(-10), never.slice(-10)].map(howFarOff);
    console.log(
      `first three ${JSON.stringify(first)}\nlast ten ${JSON.stringify(last)}\nnever ${JSON.stringify(unlearned)}`,
    );
    for (const name of ["kWhPercent", "shelfC", "coolPercent"] as const) {
      expect(last?.[name] as number, `${name}, against the first three`).toBeLessThan(first?.[name] as number);
      expect(last?.[name] as number, `${name}, against never`).toBeLessThan(unlearned?.[name] as number);
    }
  });

  test("is foretold within what was promised once it has taught: kWh ± 5 %, shelves ± 5 °C, cooling ± 10 %", () => {
    const last = learned.slice(-10);
    const worst = (of: (row: FiringAgainst) => number): number => Math.max(...last.map((row) => Math.abs(of(row))));
    const kWh = worst(({ kWh: { off, actual } }) => (100 * (off as number)) / (actual as number));
    const cool = worst(({ coolHours: { off, actual } }) => (100 * (off as number)) / (actual as number));
    // Cones stand up to four degrees beside their shelf's mean and are read by eye: a shelf's own heat is known here.
    const shelfC = Math.max(...truth.fired.slice(-10).map(shelvesOffC));
    console.log(
      `worst of the last ten: kWh ${kWh.toFixed(1)} %, shelves ${shelfC.toFixed(1)} °C, cooling ${cool.toFixed(1)} %`,
    );
    expect(kWh).toBeLessThanOrEqual(5);
    expect(shelfC).toBeLessThanOrEqual(5);
    expect(cool).toBeLessThanOrEqual(10);
    // And by the cones, as she sees it.
    expect(howFarOff(last).shelfC).toBeLessThanOrEqual(5);
  });

  /** How far the shelves of a firing were from what was foretold, in truth, root mean square. */
  function shelvesOffC({ id, levelHeatC }: TrueFired): number {
    const told = year.firings.find((each) => each.id === id)?.foretold?.levels ?? [];
    expect(told).toHaveLength(levelHeatC.length);
    const squares = told.map(({ level, ladder }) => (equivalentC(ladder) - (levelHeatC[level] as number)) ** 2);
    return Math.sqrt(squares.reduce((sum, each) => sum + each, 0) / squares.length);
  }
});

describe("its figures add up", () => {
  test("each piece's share to its firing's cost, to the hundredth; firings to months; months to the year", () => {
    const { settings } = year;
    let [energy, total, kWh] = [0, 0, 0];
    for (const firing of year.firings) {
      const { money, cents, pieces, wares } = firingCostShares(firing, loadOf(firing), settings);
      expect(money.notes).toEqual([]);
      expect(pieces.reduce((sum, each) => sum + each.cents, 0)).toBe(cents);
      expect(wares.reduce((sum, each) => sum + each.cents, 0)).toBe(cents);
      expect(cents).toBe(Math.round(100 * (money.total ?? 0)));
      energy += money.energy as number;
      total += money.total as number;
      kWh += money.kWh as number;
    }
    const months = monthCosts(year.firings, year.loads, settings);
    const sum = (of: (month: (typeof months)[number]) => number): number =>
      months.reduce((all, each) => all + of(each), 0);
    expect(sum((each) => each.firings)).toBe(truth.fired.length);
    expect(sum((each) => each.unknown)).toBe(0);
    expect(sum((each) => each.energy)).toBeCloseTo(energy, 6);
    expect(sum((each) => each.total)).toBeCloseTo(total, 6);
    expect(sum((each) => each.energy + each.elements + each.shelves)).toBeCloseTo(total, 6);
    expect(sum((each) => each.kWh)).toBeCloseTo(kWh, 6);
    // What the meter ran over the year is what its firings drew, and no more than all of it at the day's price costs.
    const [first, last] = [year.firings[0], year.firings.at(-1)];
    expect((last?.meterReadings.at(-1)?.kWh ?? 0) - (first?.meterReadings[0]?.kWh ?? 0)).toBeCloseTo(kWh, 6);
    expect(kWh).toBeCloseTo(
      year.firings.reduce((all, each) => all + (meteredKWh(each) ?? 0), 0),
      6,
    );
    expect(energy).toBeGreaterThan(0.21 * kWh);
    expect(energy).toBeLessThan(0.34 * kWh);
  });

  test("every piece thrown is finished, a second, lost, or waits; those in loads among them", () => {
    const counted = (of: (ware: KeptYear["ware"][number]) => boolean): number =>
      year.ware.filter(of).reduce((sum, each) => sum + each.ware.count, 0);
    const outcomes = year.firings.flatMap((firing) =>
      (firing.outcomes ?? []).map((each) => ({ ...each, kind: firing.programme?.kind })),
    );
    const lost = outcomes.filter(({ grade }) => grade === "lost").length;
    const seconds = counted(({ stage, ownerNote }) => stage === "finished" && ownerNote === "seconds");
    const good = counted(({ stage, ownerNote }) => stage === "finished" && ownerNote !== "seconds");
    const waiting = counted(({ stage }) => stage !== "finished");
    console.log(`${truth.thrown} thrown: ${good} good, ${seconds} seconds, ${lost} lost, ${waiting} wait`);
    expect(good + seconds + lost + waiting).toBe(truth.thrown);
    const glazed = (grade: string): number =>
      outcomes.filter((each) => each.kind === "glaze" && each.grade === grade).length;
    expect([good, seconds]).toEqual([glazed("good"), glazed("second")]);
    expect(lost).toBeGreaterThan(3);
    // The load that is planned and not fired holds pieces that wait.
    const open = year.loads.filter(({ state }) => state !== "unpacked");
    expect(open).toHaveLength(1);
    const placed = open.flatMap(({ plan }) => plan?.levels ?? []).flatMap(({ placements }) => placements).length;
    expect(placed).toBeGreaterThan(10);
    expect(placed).toBeLessThanOrEqual(waiting);
  });

  test("the elements' wear is noticed: how much power is left, and how many firings, against the truth", () => {
    const { elements, reminders } = upkeepDue(year.kiln, year.upkeep, year.firings);
    const { powerLeft, remainingFirings, fromNew, points } = elements.wear;
    const left = truth.kiln.firingsLeft();
    console.log(
      `power left ${powerLeft?.toFixed(4)}, in truth ${truth.kiln.powerLeft().toFixed(4)}; firings left ${JSON.stringify(remainingFirings)}, in truth ${left}`,
    );
    expect(elements.firings).toBe(truth.fired.length);
    expect(fromNew).toBe(true);
    expect(points.length).toBeGreaterThanOrEqual(6);
    // A tenth of an ohm on thirty is a third of a percent.
    expect(Math.abs((powerLeft as number) - truth.kiln.powerLeft())).toBeLessThan(0.004);
    expect(Math.abs((remainingFirings?.expected as number) - left)).toBeLessThanOrEqual(Math.max(4, 0.2 * left));
    expect(reminders.some(({ what }) => what === "Have new elements ready")).toBe(left <= 15);
  });

  test("nothing but the kiln was simulated: the same seed gives the same records", async () => {
    const again = await studioInUse();
    try {
      await liveYear({ store: again.store, beginsAt: BEGINS, seed: 1, months: 1 });
      const { firings, loads, calibrations } = await keptYear(again.store);
      expect(firings).toEqual(year.firings.slice(0, firings.length));
      expect(loads[0]).toEqual(year.loads[0]);
      expect(calibrations).toEqual(year.calibrations.slice(0, calibrations.length));
    } finally {
      await again.end();
    }
  });
});

describe("its firings, watched as the server watches them", () => {
  test("bring no notice while nothing is wrong, over the whole year", () => {
    let readings = 0;
    const told = year.firings.flatMap((firing) => {
      const fed = fedReadings(year, firing);
      readings += fed.length;
      return watchedFaults(year, firing, fed).map(
        ({ kind, noticedMin, found }) => `${firing.name}: ${kind} at ${noticedMin}: ${found}`,
      );
    });
    console.log(`${year.firings.length} quiet firings, ${readings} readings: ${told.length} notices`);
    expect(told).toEqual([]);
  });

  test.each(FED_FAULTS)("tell of $name within $withinMin minutes, once", (fault) => {
    // A fault each in six firings spread over the year: all of them would take minutes and tell the same.
    const late: number[] = [];
    for (const firing of year.firings.filter((_, i) => i % 5 === 1)) {
      const fed = withFault(firing, fedReadings(year, firing), fault);
      if (fed === null) continue;
      const faults = watchedFaults(year, firing, fed.readings);
      expect(
        faults.map(({ kind }) => kind),
        firing.name,
      ).toEqual([fault.kind]);
      late.push((faults[0]?.noticedMin as number) - fed.at);
    }
    console.log(
      `${fault.name}: noticed after ${Math.max(...late).toFixed(1)} min at the latest, in ${late.length} firings`,
    );
    expect(late.length).toBeGreaterThanOrEqual(5);
    expect(Math.max(...late)).toBeLessThanOrEqual(fault.withinMin);
  });
});
