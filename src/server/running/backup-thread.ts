import { parentPort, workerData } from "node:worker_threads";
import { backUp } from "../../store/backups.ts";
import { openStore } from "../../store/open-store.ts";

/** What the thread is to save, and where. */
export interface BackupTask {
  /** A store's file, or its connection string. */
  readonly place: string;
  readonly folder: string;
  readonly now: string;
}

// Years of readings take a while to pack: in a thread of its own, over a line of its own to the store, nobody waits.
const { place, folder, now } = workerData as BackupTask;
const store = await openStore(place);
try {
  parentPort?.postMessage(await backUp(store, folder, now));
} finally {
  await store.close();
}
