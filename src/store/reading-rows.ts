import { KINDS } from "../studio/records/all-kinds.ts";
import { checkReadings, type Reading } from "../studio/records/reading.ts";
import { unknownRecord } from "../studio/records/refusals.ts";
import { rollUp, shownRollUp } from "../studio/records/roll-up.ts";
import type { ReadingSet, ReadingSpan } from "../studio/records/store.ts";
import type { Database } from "./database.ts";
import { inParts } from "./in-parts.ts";
import { addToRollUps, isRolledUp, rollUpAgain, rollUpAll, rollUpsOf } from "./reading-roll-ups.ts";
import { type ProbeOfFiring, readingsWithin } from "./readings-within.ts";

const COLUMNS = 4;

/** Readings, a row each, and their roll-ups, kept up in the same transaction. */
export function readingRows(database: Database): ReadingSet {
  const within = async (firingId: string, span: ReadingSpan) => {
    const series = [];
    for (const probe of await probesOf(database, firingId)) {
      const readings = await readingsWithin(database, { firingId, probe }, span);
      if (readings.length > 0) series.push({ firingId, probe, readings });
    }
    return series;
  };
  return {
    add: async (firingId, probe, readings) => {
      checkReadings(probe, readings);
      const firing = await database.selectFrom("firings").select("id").where("id", "=", firingId).executeTakeFirst();
      if (!firing) throw unknownRecord(KINDS.firings, firingId);
      // One statement may not touch a row twice: of readings at one moment the last counts.
      const byMoment = new Map(readings.map((reading) => [reading.at, reading]));
      if (byMoment.size === 0) return;
      const series = { firingId, probe };
      const rolledUp = (await isRolledUp(database, series)) || !(await hasReadings(database, series));
      const { fresh, replaced } = await keep(database, series, [...byMoment.values()]);
      if (!rolledUp) return rollUpAll(database, series);
      await addToRollUps(database, series, fresh);
      await rollUpAgain(database, series, replaced);
    },
    of: (firingId, since = "") => within(firingId, { from: since }),
    within,
    rolledUp: async (firingId, period, span = {}) => {
      const kept = await rollUpsOf(database, firingId, period, span);
      // Readings from before there were roll-ups are gathered as they are asked for, until one more is added to them.
      for (const probe of await probesOf(database, firingId)) {
        if (kept.has(probe)) continue;
        const { most, ...whole } = span;
        const readings = await readingsWithin(database, { firingId, probe }, whole);
        kept.set(probe, rollUp(period, readings).slice(0, most));
      }
      return [...kept]
        .filter(([, rollUps]) => rollUps.length > 0)
        .sort(([a], [b]) => (a < b ? -1 : 1))
        .map(([probe, rollUps]) => ({ firingId, probe, rollUps: rollUps.map(shownRollUp) }));
    },
    remove: async (firingId) => {
      await database.deleteFrom("readings").where("firingId", "=", firingId).execute();
      await database.deleteFrom("readingRollUps").where("firingId", "=", firingId).execute();
    },
  };
}

/** Keeps readings. Tells which were not there before, and the moments of those that were and read otherwise. */
async function keep(database: Database, series: ProbeOfFiring, readings: readonly Reading[]) {
  const inserted = new Set<unknown>();
  const replaced: string[] = [];
  const rows = readings.map(({ at, tempC }) => ({ ...series, at, tempC }));
  for (const part of inParts(rows, COLUMNS)) {
    const these = await database
      .insertInto("readings")
      .values(part)
      .onConflict((there) => there.columns(["firingId", "probe", "at"]).doNothing())
      .returning("at")
      .execute();
    for (const { at } of these) inserted.add(at);
    const others = part.filter(({ at }) => !inserted.has(at));
    if (others.length === 0) continue;
    const changed = await database
      .insertInto("readings")
      .values(others)
      .onConflict((there) =>
        there
          .columns(["firingId", "probe", "at"])
          .doUpdateSet((given) => ({ tempC: given.ref("excluded.tempC") }))
          .whereRef("readings.tempC", "!=", "excluded.tempC" as "readings.tempC"),
      )
      .returning("at")
      .execute();
    replaced.push(...changed.map(({ at }) => at as string));
  }
  return { fresh: readings.filter(({ at }) => inserted.has(at)), replaced };
}

async function hasReadings(database: Database, { firingId, probe }: ProbeOfFiring): Promise<boolean> {
  const row = await database
    .selectFrom("readings")
    .select("at")
    .where("firingId", "=", firingId)
    .where("probe", "=", probe)
    .limit(1)
    .executeTakeFirst();
  return row !== undefined;
}

/** The probes that have read in a firing, by name: one short look for each, however much each has read. */
async function probesOf(database: Database, firingId: string): Promise<string[]> {
  const probes: string[] = [];
  for (;;) {
    const next = await database
      .selectFrom("readings")
      .select("probe")
      .where("firingId", "=", firingId)
      .where("probe", ">", probes.at(-1) ?? "")
      .orderBy("probe")
      .limit(1)
      .executeTakeFirst();
    if (next === undefined) return probes;
    probes.push(next.probe as string);
  }
}
