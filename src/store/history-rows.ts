import { shown } from "../measures/bad-input.ts";
import {
  HISTORY_STANDINGS,
  type HistoryCard,
  type HistorySet,
  type HistoryStanding,
  type KeptEntry,
  MOST_ENTRIES,
  MOST_ENTRIES_A_SCOPE,
  MOST_ENTRIES_WITH_PICTURES,
  type RecordChange,
  type SettingsChange,
} from "../studio/records/history.ts";
import { corruptRow } from "../studio/records/refusals.ts";
import type { Database, Row } from "./database.ts";
import { fromJson } from "./from-json.ts";
import { historyReadings } from "./history-readings.ts";

const CARD = ["id", "at", "scope", "command", "summary", "standing"] as const;

/** What was done, an entry a row. */
export function historyRows(database: Database): HistorySet {
  return {
    get: async (id) => {
      const row = await database.selectFrom("history").selectAll().where("id", "=", id).executeTakeFirst();
      return row ? entryOf(row) : null;
    },
    list: async (scope) => {
      const rows = await database
        .selectFrom("history")
        .select(CARD)
        .where("scope", "=", scope)
        .where("standing", "in", ["done", "undone"])
        .orderBy("place", "desc")
        .execute();
      return rows.map(cardOf);
    },
    add: async (entry) => {
      const newest = await database
        .selectFrom("history")
        .select(({ fn }) => fn.max("place").as("place"))
        .executeTakeFirst();
      await database
        .insertInto("history")
        .values({ ...rowOf(entry), place: Number(newest?.place ?? 0) + 1 })
        .execute();
      await thin(database, entry.scope);
    },
    change: async (entry) => {
      await database.updateTable("history").set(rowOf(entry)).where("id", "=", entry.id).execute();
    },
    keepPicture: async (entryId, photoId, bytes) => {
      await database
        .insertInto("historyPictures")
        .values({ entryId, photoId, bytes })
        .onConflict((there) => there.columns(["entryId", "photoId"]).doUpdateSet({ bytes }))
        .execute();
      const older = await database
        .selectFrom("history")
        .select("id")
        .where("id", "in", database.selectFrom("historyPictures").select("entryId"))
        .orderBy("place", "desc")
        .execute();
      for (const { id } of older.slice(MOST_ENTRIES_WITH_PICTURES)) {
        await database.deleteFrom("history").where("id", "=", id).execute();
      }
    },
    picture: async (entryId, photoId) => {
      const row = await database
        .selectFrom("historyPictures")
        .select("bytes")
        .where("entryId", "=", entryId)
        .where("photoId", "=", photoId)
        .executeTakeFirst();
      return row ? new Uint8Array(row.bytes as Uint8Array) : null;
    },
    ...historyReadings(database),
  };
}

const rowOf = ({ changes, settings, ...card }: KeptEntry): Row => ({
  ...card,
  changes: JSON.stringify(changes),
  settings: settings === null ? null : JSON.stringify(settings),
});

function cardOf(row: Row): HistoryCard {
  const standing = row.standing as HistoryStanding;
  if (!HISTORY_STANDINGS.includes(standing)) {
    throw corruptRow(`history ${shown(row.id)}.standing`, shown(standing), HISTORY_STANDINGS.join(" or "));
  }
  const [id, at, scope, command, summary] = CARD.map((name) => row[name] as string) as [
    string,
    string,
    string,
    string,
    string,
  ];
  return { id, at, scope, command, summary, standing };
}

function entryOf(row: Row): KeptEntry {
  const json = (name: "changes" | "settings"): unknown => fromJson(row[name], `history ${shown(row.id)}.${name}`);
  return {
    ...cardOf(row),
    changes: json("changes") as RecordChange[],
    settings: row.settings === null ? null : (json("settings") as SettingsChange),
  };
}

/** Forgets the oldest entries past what a scope and the whole studio keep. */
async function thin(database: Database, scope: string): Promise<void> {
  const places = database.selectFrom("history").select("place").orderBy("place", "desc").limit(1);
  const inScope = await places.where("scope", "=", scope).offset(MOST_ENTRIES_A_SCOPE).executeTakeFirst();
  if (inScope) {
    await database
      .deleteFrom("history")
      .where("scope", "=", scope)
      .where("place", "<=", inScope.place as number)
      .execute();
  }
  const ofAll = await places.offset(MOST_ENTRIES).executeTakeFirst();
  if (ofAll)
    await database
      .deleteFrom("history")
      .where("place", "<=", ofAll.place as number)
      .execute();
}
