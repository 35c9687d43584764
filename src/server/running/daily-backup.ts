import { listBackups } from "../../store/backups.ts";
import type { StudioStore } from "../../studio/records/store.ts";
import { backUpInThread } from "./back-up-in-thread.ts";
import { backupFolder } from "./data-folder.ts";

const DAY_MS = 24 * 60 * 60_000;
const LOOK_MS = 30 * 60_000;

/** What keeps the backups coming. */
export interface DailyBackup {
  /** Ends it, once a backup under way is whole. */
  readonly stop: () => Promise<void>;
}

/**
 * Writes a backup where the newest is older than a day. An empty studio has nothing to save.
 *
 * @param place the store's file, or its connection string
 */
export async function backUpIfDue(
  store: StudioStore,
  place: string,
  dataFolder: string,
  now: string,
): Promise<string | null> {
  const newest = listBackups(backupFolder(dataFolder)).find(({ beforeRestore }) => !beforeRestore);
  if (newest && Date.parse(now) - Date.parse(newest.madeAt) < DAY_MS) return null;
  if (await store.read((records) => records.isEmpty())) return null;
  return backUpInThread({ place, folder: backupFolder(dataFolder), now });
}

/**
 * Looks every half hour whether a backup is due: a laptop that slept through the night gets its own in the morning.
 *
 * @param complain told where one could not be written; the studio goes on
 */
export function keepDailyBackups(
  store: StudioStore,
  place: string,
  dataFolder: string,
  now: () => string,
  complain: (error: Error) => void,
): DailyBackup {
  let under: Promise<unknown> = Promise.resolve();
  const look = (): void => {
    under = under.then(() => backUpIfDue(store, place, dataFolder, now())).catch(complain);
  };
  look();
  const timer = setInterval(look, LOOK_MS);
  timer.unref();
  return {
    stop: async () => {
      clearInterval(timer);
      await under;
    },
  };
}
