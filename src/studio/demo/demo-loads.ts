import type { ClearanceRules } from "../../loading/clearance-rules.ts";
import type { LoadPlanFile } from "../../loading/load-plan.ts";
import { planLoad } from "../../loading/planner/plan-load.ts";
import { readLoadRequest } from "../../loading/read-load-request.ts";
import { loadRequestOf } from "../loads/load-request-of.ts";
import type { GlazeRecord } from "../records/clay-and-glaze-records.ts";
import type { KilnRecord } from "../records/kiln-record.ts";
import type { LoadRecord, Tick } from "../records/load-record.ts";
import type { WareRecord } from "../records/ware-record.ts";
import type { DemoTime } from "./demo-time.ts";

// Enough looking for a load that pleases, little enough that a new studio is there in a second.
const WORK_LIMIT = 400_000;

/** Bisque ware may stand close: it has nothing on it that would stick. Common practice, no source. */
const BISQUE_GAPS: Partial<ClearanceRules> = { gapMm: 2 };

/** The demo's records that its loads are made of. */
export interface DemoStock {
  readonly big: KilnRecord;
  readonly small: KilnRecord;
  readonly ware: readonly WareRecord[];
  readonly glazes: readonly GlazeRecord[];
}

/** What she chose for the market; the platter in hope. */
const FOR_THE_MARKET = [
  ...["espresso cup", "breakfast mug", "breakfast mug, blue", "soup bowl", "side plate", "bud vase", "little beaker"],
  ...["honey jar", "honey jar lid", "round teapot", "milk jug", "dipping dish", "ring bowl", "great platter"],
];

/** What went to the autumn fair, made anew since. */
const SOLD_SINCE = [
  ...["espresso cup", "breakfast mug", "straight beaker", "tea bowl", "bud vase", "shoulder vase", "oil bottle"],
  ...["milk jug", "honey jar", "salt pig", "incense stand", "ring bowl", "noodle bowl"],
];

/** The other way: tall things from the bottom up, and Maren's four another time. */
const WITH_THE_TALL_VASE = [
  ...["tall vase", "oil bottle", "shoulder vase", "espresso cup", "breakfast mug", "bud vase", "little beaker"],
  ...["honey jar", "honey jar lid", "round teapot", "milk jug", "dipping dish", "ring bowl"],
];

/** The demo's loads by the word the rest of it knows them by. */
export interface DemoLoads {
  readonly market: LoadRecord;
  readonly tall: LoadRecord;
  readonly bisque: LoadRecord;
  readonly trial: LoadRecord;
  readonly pastBisque: LoadRecord;
  readonly pastGlaze: LoadRecord;
}

/**
 * The next glaze firing in two ways, the bisque she is loading today, and three unpacked ones: a trial of last week's,
 * and the big kiln's last bisque and glaze, whose ware has moved on since.
 */
export function demoLoads(stock: DemoStock, time: DemoTime, newId: () => string): DemoLoads {
  const chosen = (names: readonly string[]) => stock.ware.filter(({ ware }) => names.includes(ware.name));
  const bisqueWare = stock.ware.filter(
    (batch) => batch.firingKind === "bisque" && batch.ware.name.search(/candle|herb/) < 0,
  );
  const done = stock.ware.filter(({ stage }) => stage === "finished");
  const make = (kiln: KilnRecord, ware: readonly WareRecord[], seed: number, rules?: Partial<ClearanceRules>) => {
    const { request, sources } = loadRequestOf(kiln, ware, { glazes: stock.glazes, rules });
    const outcome = planLoad(readLoadRequest(request), { seed, workLimit: WORK_LIMIT });
    if (outcome.kind === "impossible")
      throw new Error(`The demo has a load that cannot be: ${outcome.reasons[0]?.message}`);
    const plan = JSON.parse(JSON.stringify(outcome.plan)) as LoadPlanFile;
    return { id: newId(), kilnId: kiln.id, request, sources, plan, pins: [], ticks: [], version: 1 };
  };
  const made = (daysAgo: number) => ({ createdAt: time.ago(daysAgo), changedAt: time.ago(daysAgo / 2) });

  const market: LoadRecord = {
    ...make(stock.big, chosen(FOR_THE_MARKET), 2),
    ...{ name: "before the winter market", state: "planned", pins: [{ level: 0, placement: 0 }], ...made(1) },
  };
  const tall: LoadRecord = {
    ...make(stock.big, chosen(WITH_THE_TALL_VASE), 1),
    ...{ name: "with the tall vase", state: "planned", alternativeOf: market.id, ...made(0.5) },
  };
  const bisque: LoadRecord = {
    ...make(stock.big, bisqueWare, 2, BISQUE_GAPS),
    name: "bisque for the new year",
    state: "loading",
    ...made(2),
  };
  const trial: LoadRecord = {
    ...make(stock.small, done, 1),
    name: "tide and slate, trial",
    state: "unpacked",
    ...made(14),
  };
  const pastBisque: LoadRecord = {
    ...make(
      stock.big,
      gone(
        stock.ware.filter(({ stage }) => stage === "bisque"),
        "05",
        newId,
      ),
      3,
      BISQUE_GAPS,
    ),
    ...{ name: "bisque, full to the lid", state: "unpacked", ...made(26) },
  };
  const pastGlaze: LoadRecord = {
    ...make(stock.big, gone(chosen(SOLD_SINCE), "6", newId), 4),
    ...{ name: "the last of the autumn", state: "unpacked", ...made(20) },
  };
  const all = (plan: LoadPlanFile | null, days: number) =>
    ticksOf(plan, Number.POSITIVE_INFINITY, (n) => time.ago(days, 400 - n));
  return {
    market,
    tall,
    bisque: { ...bisque, ticks: ticksOf(bisque.plan, 1.5, (n) => time.ago(0, 50 - n)) },
    trial: { ...trial, ticks: all(trial.plan, 13) },
    pastBisque: { ...pastBisque, ticks: all(pastBisque.plan, 24) },
    pastGlaze: { ...pastGlaze, ticks: all(pastGlaze.plan, 18) },
  };
}

/** Like batches that were there before and have moved on: of the same make, under ids that are kept no more. */
const gone = (ware: readonly WareRecord[], cone: string, newId: () => string): WareRecord[] =>
  ware.map((batch) => {
    const { mustFire: _, ...piece } = batch.ware;
    return { ...batch, id: newId(), ware: { ...piece, cone } };
  });

/** Pieces set down from the floor up, so many levels of them: one and a half is the first, and half of the next. */
function ticksOf(plan: LoadPlanFile | null, levels: number, at: (n: number) => string): Tick[] {
  const ticks: Tick[] = [];
  plan?.levels.forEach(({ placements }, level) => {
    const share = Math.min(1, Math.max(0, levels - level));
    for (let placement = 0; placement < Math.round(placements.length * share); placement++) {
      ticks.push({ level, placement, at: at(ticks.length) });
    }
  });
  return ticks;
}
