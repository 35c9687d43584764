import { queries } from "./cache.ts";
import { ask } from "./client.ts";
import { waitingCount } from "./connection.ts";
import { keptRead } from "./kept-reads.ts";

const LET_CHANGES_GO_FIRST_MS = 2000;

/**
 * Reads from the studio. What this device kept from last time is shown meanwhile, and stays where the studio is away.
 *
 * @param path under /api, without the first stroke; its own key in the cache where it is kept
 */
export async function read<Answer>(path: string, kept = true): Promise<Answer> {
  if (kept) void showKeptMeanwhile(path);
  // Her own waiting changes go first, or the studio's older word would blink over them.
  if (waitingCount.get() > 0) await changesGone();
  return ask<Answer>(`/${path}`);
}

async function showKeptMeanwhile(path: string): Promise<void> {
  if (queries.getQueryData([path]) !== undefined) return;
  const found = await keptRead(path);
  if (found === undefined || queries.getQueryData([path]) !== undefined) return;
  queries.setQueryData([path], found, { updatedAt: 1 });
}

const changesGone = (): Promise<void> =>
  new Promise((resolve) => {
    const done = () => {
      clearTimeout(timer);
      stop();
      resolve();
    };
    const timer = setTimeout(done, LET_CHANGES_GO_FIRST_MS);
    const stop = waitingCount.subscribe(() => {
      if (waitingCount.get() === 0) done();
    });
  });
