import type { StudioStore } from "../studio/records/store.ts";
import { openPostgresStore } from "./postgres-store.ts";
import { openSqliteStore } from "./sqlite-store.ts";

/**
 * Opens the studio's store where `place` says: a `postgres://` or `postgresql://` connection string, or else the path
 * of an SQLite file.
 */
export const openStore = (place: string): Promise<StudioStore> =>
  /^postgres(ql)?:\/\//.test(place) ? openPostgresStore(place) : openSqliteStore(place);
