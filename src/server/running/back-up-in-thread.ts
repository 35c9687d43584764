import { Worker } from "node:worker_threads";
import type { BackupTask } from "./backup-thread.ts";

/**
 * Writes a backup in a thread of its own.
 *
 * @returns the file
 * @throws Error saying why it could not be written
 */
export function backUpInThread(workerData: BackupTask): Promise<string> {
  const file = `./backup-thread.${import.meta.url.endsWith(".ts") ? "ts" : "js"}`;
  const thread = new Worker(new URL(file, import.meta.url), { workerData });
  return new Promise((resolve, reject) => {
    thread.once("message", resolve);
    thread.once("error", reject);
    thread.once("exit", (code) =>
      reject(new Error(`The backup's thread ended (${code}) before the backup was whole.`)),
    );
  });
}
