import { createStore, del, entries, set, type UseStore } from "idb-keyval";
import type { CommandAnswer } from "../../../studio/api/contract.ts";
import { tell, wordsOf } from "../../parts/index.ts";
import { showChanged } from "../../studio/cache.ts";
import { ask, StudioAway } from "../../studio/client.ts";
import { answering, waitingCount } from "../../studio/connection.ts";
import { newId } from "../../studio/new-id.ts";
import { watched } from "../../studio/watched.ts";
import { sendEach, type WaitingSend } from "./send-each.ts";

// Pictures and temperatures from beside the kiln. They are no commands, so they have a line of their own: kept on this
// device first, sent when the studio answers and her other changes have gone.

/** What waits, as the screens show it; the oldest first. */
export const waitingSends = watched<readonly WaitingSend[]>([]);

let store: UseStore | null = null;
const line = (): UseStore => {
  store ??= createStore("wareboard-unload", "waiting");
  return store;
};

async function lookAgain(): Promise<readonly WaitingSend[]> {
  const all = await entries<string, WaitingSend>(line());
  const inOrder = all.map(([, each]) => each).sort((a, b) => (a.at < b.at ? -1 : 1));
  waitingSends.set(inOrder);
  return inOrder;
}

/**
 * Keeps something on this device and sends it as soon as may be.
 *
 * @throws Error where this browser keeps nothing
 */
export async function sendLater(what: Omit<WaitingSend, "key" | "at">): Promise<void> {
  const key = newId();
  await set(key, { ...what, key, at: new Date().toISOString() } satisfies WaitingSend, line());
  await lookAgain();
  void sendWaiting();
}

/** Takes back what was not sent yet. */
export async function letGo(key: string): Promise<void> {
  await del(key, line());
  await lookAgain();
}

/** A phone's line may be slow; the usual patience is for questions without a picture. */
const PICTURE_PATIENCE_MS = 120_000;

async function send({ key, path, picture, json }: WaitingSend): Promise<void> {
  if (picture === undefined) {
    await ask(path, { body: json });
    return;
  }
  // The key makes a picture come once, however often it is sent.
  const answer = await ask<CommandAnswer>(`${path}&key=${encodeURIComponent(key)}`, {
    bytes: picture,
    signal: AbortSignal.timeout(PICTURE_PATIENCE_MS),
  });
  showChanged(answer.changed);
}

/** Sends what waits; one page at a time, nothing while the studio is away or her changes have not gone. */
export async function sendWaiting(): Promise<void> {
  const work = () =>
    sendEach({
      all: lookAgain,
      mayGo: () => answering.get() && waitingCount.get() === 0,
      send,
      isAway: (error) =>
        error instanceof StudioAway || (error instanceof DOMException && error.name === "TimeoutError"),
      refused: (what, error) => tell(`${what.about}: ${wordsOf(error)}`),
      done: ({ key }) => letGo(key),
    });
  try {
    if (typeof navigator.locks === "undefined") await work();
    else await navigator.locks.request("wareboard-unload", work);
  } catch {
    // A browser that keeps nothing has nothing waiting.
  }
}

/** From now on, sends what waits whenever the studio answers. */
export function keepSending(): void {
  const go = () => void sendWaiting();
  answering.subscribe(go);
  waitingCount.subscribe(go);
  go();
}
