import { sql } from "kysely";
import type { Reading } from "../studio/records/reading.ts";
import { type KeptRollUp, ROLL_UP_PERIODS, type RollUpPeriod, rollUp, startOf } from "../studio/records/roll-up.ts";
import type { ReadingSpan } from "../studio/records/store.ts";
import type { Database } from "./database.ts";
import { inParts } from "./in-parts.ts";
import { type ProbeOfFiring, readingsWithin } from "./readings-within.ts";

// How roll-ups are kept up is decided in docs/decisions/0012-readings.md.

const TABLE = "readingRollUps";
const COLUMNS = 12;

/** Whether anything was ever rolled up for this probe. */
export async function isRolledUp(database: Database, { firingId, probe }: ProbeOfFiring): Promise<boolean> {
  const row = await database
    .selectFrom(TABLE)
    .select("at")
    .where("firingId", "=", firingId)
    .where("period", "=", "hour")
    .where("probe", "=", probe)
    .limit(1)
    .executeTakeFirst();
  return row !== undefined;
}

/** Adds readings that were not there before to the minutes and hours they fall in. */
export async function addToRollUps(database: Database, probe: ProbeOfFiring, fresh: readonly Reading[]): Promise<void> {
  for (const period of ROLL_UP_PERIODS) await put(database, probe, period, rollUp(period, fresh));
}

/**
 * Gathers afresh, from the readings kept, the minutes and hours in which a reading was replaced.
 *
 * @param moments of the readings replaced
 */
export async function rollUpAgain(database: Database, probe: ProbeOfFiring, moments: readonly string[]): Promise<void> {
  for (const period of ROLL_UP_PERIODS) {
    for (const start of new Set(moments.map((at) => startOf(period, at)))) {
      const readings = await readingsWithin(database, probe, { from: start, to: endOf(period, start) });
      await database
        .deleteFrom(TABLE)
        .where("firingId", "=", probe.firingId)
        .where("period", "=", period)
        .where("probe", "=", probe.probe)
        .where("at", "=", start)
        .execute();
      await put(database, probe, period, rollUp(period, readings));
    }
  }
}

/** Gathers everything a probe has read: for readings from before there were roll-ups. */
export async function rollUpAll(database: Database, probe: ProbeOfFiring): Promise<void> {
  await addToRollUps(database, probe, await readingsWithin(database, probe, {}));
}

/** The minutes or hours of a firing within a span, by probe; none where nothing was rolled up. */
export async function rollUpsOf(
  database: Database,
  firingId: string,
  period: RollUpPeriod,
  { from = "", to = "~", most = Number.MAX_SAFE_INTEGER }: ReadingSpan,
): Promise<Map<string, KeptRollUp[]>> {
  const ofPeriod = database.selectFrom(TABLE).where("firingId", "=", firingId);
  const probes = await ofPeriod.select("probe").distinct().where("period", "=", "hour").orderBy("probe").execute();
  const found = new Map<string, KeptRollUp[]>();
  for (const { probe } of probes) {
    const rows = await ofPeriod
      .select(["at", "count", "leastC", "mostC", "sumC", "firstC", "lastC", "firstAt", "lastAt"])
      .where("period", "=", period)
      .where("probe", "=", probe as string)
      .where("at", ">=", from === "" ? "" : startOf(period, from))
      .where("at", "<", to)
      .orderBy("at")
      .limit(most)
      .execute();
    found.set(probe as string, rows as unknown as KeptRollUp[]);
  }
  return found;
}

async function put(
  database: Database,
  { firingId, probe }: ProbeOfFiring,
  period: RollUpPeriod,
  rollUps: readonly KeptRollUp[],
): Promise<void> {
  const rows = rollUps.map((each) => ({ firingId, probe, period, ...each }));
  for (const part of inParts(rows, COLUMNS)) {
    await database
      .insertInto(TABLE)
      .values(part)
      .onConflict((there) => there.columns(["firingId", "period", "probe", "at"]).doUpdateSet(merged))
      .execute();
  }
}

const before = (column: string) => sql.ref(`${TABLE}.${column}`);
const given = (column: string) => sql.ref(`excluded.${column}`);
const sum = (column: string) => sql<number>`${before(column)} + ${given(column)}`;
/** The given value of `column` where the given `by` is less (or more) than the one before. */
const where = (column: string, by: string, less: boolean) =>
  sql<number>`case when ${given(by)} ${sql.raw(less ? "<" : ">")} ${before(by)} then ${given(column)} else ${before(column)} end`;
const merged = {
  count: sum("count"),
  sumC: sum("sumC"),
  leastC: where("leastC", "leastC", true),
  mostC: where("mostC", "mostC", false),
  firstC: where("firstC", "firstAt", true),
  firstAt: where("firstAt", "firstAt", true),
  lastC: where("lastC", "lastAt", false),
  lastAt: where("lastAt", "lastAt", false),
};

const LASTS_MS: Readonly<Record<RollUpPeriod, number>> = { minute: 60_000, hour: 3_600_000 };
const endOf = (period: RollUpPeriod, start: string): string =>
  new Date(Date.parse(start) + LASTS_MS[period]).toISOString();
