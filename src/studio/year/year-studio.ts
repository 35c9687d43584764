import { equivalentC } from "../../firing/heat-work/ladder-position.ts";
import type { Programme, ProgrammeFile } from "../../firing/programme/programme.ts";
import type { LoadPlanFile } from "../../loading/load-plan.ts";
import { planLoad } from "../../loading/planner/plan-load.ts";
import { readLoadRequest } from "../../loading/read-load-request.ts";
import { type Chance, seededChance } from "../../measures/seeded-chance.ts";
import { doCommand } from "../commands/do-command.ts";
import { DEMO_KILNS } from "../demo/demo-kilns.ts";
import { DEMO_TARIFF, demoProgrammes } from "../demo/demo-programmes.ts";
import type { LoadRecord } from "../records/load-record.ts";
import type { StudioRecords, StudioStore } from "../records/store.ts";
import type { UpkeepRecord } from "../records/upkeep-record.ts";
import type { WareRecord } from "../records/ware-record.ts";
import { firedInTruth, loggedReadings, openedAfterMin, seenCones } from "./true-firing.ts";
import { type FiredKind, WornKiln } from "./worn-kiln.ts";
import { judged } from "./year-judged.ts";
import { glazeFor, thrownIn } from "./year-ware.ts";

const MINUTE_MS = 60_000;
const DAY_MS = 24 * 60 * MINUTE_MS;
const MONTHS = 14;
/** Days from one throwing to the next. */
const MONTH_DAYS = 25;
/** The elements are measured, and the shelves seen to, after so many firings. */
const MEASURED_EVERY = 5;
/** As many glazed pieces left over make a firing of their own. */
const WORTH_A_FIRING = 24;
/** Little looking: a load she would have been content with. */
const WORK_LIMIT = 20_000;
/** Bisque ware may stand close. Common practice, no source. */
const BISQUE_RULES = { gapMm: 2 };

/** A year to be lived. */
export interface YearWish {
  /** Empty. */
  readonly store: StudioStore;
  /** Its first day, ISO 8601 in UTC. */
  readonly beginsAt: string;
  readonly seed: number;
  /** How many months of throwing; fourteen of 25 days are a year. */
  readonly months?: number;
}

/** What a firing was in truth. */
export interface TrueFired {
  readonly id: string;
  readonly kind: FiredKind;
  readonly roomC: number;
  /** Heat work of each level, as °C at 60 °C/h: what its cones tell only roughly. */
  readonly levelHeatC: readonly number[];
}

/** What nobody in the studio knows of the year. */
export interface YearTruth {
  readonly kilnId: string;
  /** Every piece that was ever thrown. */
  readonly thrown: number;
  /** In the order in which they were fired. */
  readonly fired: readonly TrueFired[];
  /** The kiln at the end. */
  readonly kiln: WornKiln;
  readonly endsAt: string;
}

/**
 * Lives a year of an invented studio by the commands that she has too: ware is thrown, loaded, bisqued, glazed, fired,
 * judged; the kiln is learned from after each firing and kept in repair. Only the kiln is simulated: what its probe, its
 * meter and its cones show comes from a kiln that is not as it is described and wears as it is fired.
 *
 * Deterministic: the same wish gives the same records. About half a second of computing a firing.
 */
export async function liveYear(wish: YearWish): Promise<YearTruth> {
  const year = new Year(wish);
  await year.begin();
  for (let month = 0; month < (wish.months ?? MONTHS); month++) await year.month(month);
  return year.end();
}

class Year {
  private readonly store: StudioStore;
  private readonly chance: Chance;
  private readonly beginsMs: number;
  private readonly kiln = new WornKiln();
  private readonly programmes = demoProgrammes();
  private readonly fired: TrueFired[] = [];
  private now: string;
  private keys = 0;
  private thrown = 0;
  private meterKWh = 2884.6;

  constructor({ store, beginsAt, seed }: YearWish) {
    this.store = store;
    this.chance = seededChance(seed);
    this.beginsMs = Date.parse(beginsAt);
    this.now = beginsAt;
  }

  async begin(): Promise<void> {
    await this.give("change-settings", {
      ...{ studioName: "Window Bench, Ilsabet Quorn", currency: "EUR", tariff: DEMO_TARIFF },
      ...{ elementSetPrice: 260, elementLifeFirings: 60, shelfPrice: 34, shelfLifeFirings: 150 },
    });
    await this.give("add-kiln", { id: KILN, ...DEMO_KILNS.big });
    await this.upkeep("elements changed");
    await this.upkeep("element resistance", { ohms: this.kiln.ohms(this.chance) });
    for (const programme of [this.programmes.bisque, this.programmes.glaze]) {
      await this.give("add-programme", { programme: asFile(programme), note: "" });
    }
  }

  async month(month: number): Promise<void> {
    const firstDay = month * MONTH_DAYS;
    this.day(firstDay, 9);
    const ware = thrownIn(month);
    await this.give("add-ware", { ware });
    this.thrown += ware.reduce((sum, each) => sum + each.ware.count, 0);
    await this.fire("bisque", firstDay + 4);
    this.day(firstDay + 8, 10);
    await this.glazeAll();
    await this.fire("glaze", firstDay + 9);
    if ((await this.waiting("glazed")).reduce((sum, { ware: { count } }) => sum + count, 0) >= WORTH_A_FIRING) {
      await this.fire("glaze", firstDay + 16);
    }
  }

  /** Ends with a load that is planned and waits. */
  async end(): Promise<YearTruth> {
    this.now = new Date(Date.parse(this.now) + 2 * DAY_MS).toISOString();
    const ware = thrownIn(this.fired.length).map((each) => ({ ...each, id: `${each.id}-last` }));
    await this.give("add-ware", { ware });
    this.thrown += ware.reduce((sum, each) => sum + each.ware.count, 0);
    await this.plannedLoad("bisque");
    return { kilnId: KILN, thrown: this.thrown, fired: this.fired, kiln: this.kiln, endsAt: this.now };
  }

  private async glazeAll(): Promise<void> {
    for (const { id, ware } of await this.waiting("bisque")) {
      const change = { stage: "glazed", firingKind: "glaze", ware: { glaze: glazeFor(ware.name), cone: "6" } };
      await this.give("change-ware", { ids: [id], change });
    }
  }

  private async fire(kind: FiredKind, day: number): Promise<void> {
    this.day(day, 15);
    const load = await this.plannedLoad(kind);
    const programme = this.programmes[kind];
    const id = `firing-${this.fired.length + 1}`;
    const startedAt = this.at(day, 20);
    const wish = { loadId: load.id, programme: asFile(programme), plannedStartAt: startedAt };
    await this.give("prepare-firing", { id, ...wish });
    const { checklist = [] } = await this.kept((records) => records.firings.get(id));
    this.now = startedAt;
    for (const { item } of checklist) await this.give("tick-check", { id, item, at: startedAt });
    await this.give("start-firing", { id, at: startedAt });
    await this.give("read-meter", { id, at: startedAt, kWh: this.meterKWh });

    // The room is colder in winter than the twenty degrees that are taken for granted.
    const roomC = 20 + 2.5 * Math.cos((2 * Math.PI * (day + 160)) / 365);
    const truth = this.kiln.truth(this.chance);
    const went = firedInTruth({ load, programme, truth, roomC });
    const later = (minutes: number): string =>
      new Date(Date.parse(startedAt) + Math.round(minutes) * MINUTE_MS).toISOString();
    const readings = loggedReadings(went, startedAt, this.chance);
    await this.store.write((records) => records.readings.add(id, PROBE, readings));
    this.now = later(went.firing.shutOffMin);
    await this.give("shut-off", { id, at: this.now });
    this.now = later(openedAfterMin(went));
    this.meterKWh = Math.round(10 * (this.meterKWh + went.kWh)) / 10;
    await this.give("read-meter", { id, at: this.now, kWh: this.meterKWh });
    const cones = seenCones(went, kind === "bisque" ? "05" : "6", this.chance);
    await this.give("see-cones", { id, cones });
    const firing = await this.kept((records) => records.firings.get(id));
    await this.give("judge-pieces", { id, outcomes: judged(firing, load, kind, this.chance), becomes: [] });
    this.kiln.wear(kind);
    this.fired.push({ id, kind, roomC, levelHeatC: went.levels.map(({ ladder }) => equivalentC(ladder)) });
    await this.give("learn-from", { id: `taught-${id}`, kilnId: KILN, firingIds: [id] });
    if (this.fired.length % MEASURED_EVERY === 0) await this.seeTo();
  }

  private async seeTo(): Promise<void> {
    await this.upkeep("element resistance", { ohms: this.kiln.ohms(this.chance) });
    await this.upkeep(this.fired.length % (2 * MEASURED_EVERY) === 0 ? "shelf washed" : "shelf turned", { count: 4 });
  }

  /** A load of all that waits for this fire, planned. */
  private async plannedLoad(kind: FiredKind): Promise<LoadRecord> {
    const ware = await this.waiting(kind === "bisque" ? "greenware" : "glazed");
    const id = `load-${this.fired.length + 1}`;
    const rules = kind === "bisque" ? { rules: BISQUE_RULES } : {};
    const name = `${kind} ${this.fired.length + 1}`;
    await this.give("make-load", { id, kilnId: KILN, name, wareIds: ware.map((each) => each.id), ...rules });
    const load = await this.kept((records) => records.loads.get(id));
    const outcome = planLoad(readLoadRequest(load.request), { seed: this.fired.length, workLimit: WORK_LIMIT });
    if (outcome.kind === "impossible") throw new Error(`${name} cannot be loaded: ${outcome.reasons[0]?.message}`);
    const plan = JSON.parse(JSON.stringify(outcome.plan)) as LoadPlanFile;
    await this.give("change-load", { id, version: load.version, plan });
    return this.kept((records) => records.loads.get(id));
  }

  private waiting(stage: WareRecord["stage"]): Promise<WareRecord[]> {
    return this.store.read((records) => records.ware.list({ stage }));
  }

  private async kept<Kept>(look: (records: StudioRecords) => Promise<Kept | null>): Promise<Kept> {
    const found = await this.store.read(look);
    if (found === null) throw new Error("The invented studio has lost a record.");
    return found;
  }

  private upkeep(what: UpkeepRecord["what"], more: { ohms?: number[]; count?: number } = {}): Promise<unknown> {
    return this.give("note-upkeep", { kilnId: KILN, at: this.now, what, ...more });
  }

  private give(command: string, input: object): Promise<unknown> {
    const context = { key: `key-${++this.keys}`, now: this.now, newId: () => `made-${++this.keys}` };
    return doCommand(this.store, command, input, context);
  }

  private day(day: number, hour: number): void {
    this.now = this.at(day, hour);
  }

  private at(day: number, hour: number): string {
    return new Date(this.beginsMs + day * DAY_MS + hour * 60 * MINUTE_MS).toISOString();
  }
}

const KILN = "kiln";
const PROBE = DEMO_KILNS.big.kiln.probes?.[0]?.name ?? "thermocouple";

const asFile = (programme: Programme): ProgrammeFile => JSON.parse(JSON.stringify(programme)) as ProgrammeFile;
