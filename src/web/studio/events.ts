import type { StudioEvent } from "../../studio/api/contract.ts";
import { queries, showChanged } from "./cache.ts";
import { ask, StudioRefusal } from "./client.ts";
import { answering, passphraseAsked, waitingCount } from "./connection.ts";
import { heardNotice } from "./heard-notice.ts";
import { pauseMs } from "./line.ts";
import { line, shownEntries } from "./sending.ts";

// The studio tells every open page what changed, by whichever of them, so that two browsers stay in step.

/** More than this, and the whole list is read again. */
const ONE_BY_ONE = 20;

async function readAgain(kind: string, ids: readonly string[]): Promise<void> {
  if (queries.getQueryData([kind]) === undefined) return;
  if (ids.length > ONE_BY_ONE) return queries.invalidateQueries({ queryKey: [kind] });
  const records = await Promise.all(ids.map(async (id) => [id, await readOne(kind, id)] as const));
  showChanged({ [kind]: Object.fromEntries(records) });
}

async function readOne(kind: string, id: string): Promise<{ id: string } | null> {
  try {
    return await ask(`/${kind}/${encodeURIComponent(id)}`);
  } catch (error) {
    if (error instanceof StudioRefusal) return null;
    throw error;
  }
}

async function heard({ entryId, changed, settingsChanged, notice }: StudioEvent): Promise<void> {
  // Something to be told to her; nothing was changed by it.
  if (notice !== undefined) return heardNotice.set(notice);
  // Her own change, shown already; and while changes of hers wait, the screen is ahead of the studio.
  if (shownEntries.has(entryId)) return;
  if (waitingCount.get() > 0) {
    missed = true;
    return;
  }
  // The whole studio was replaced: nothing of it is as it was.
  if (entryId === "") return catchUp();
  if (settingsChanged) void queries.invalidateQueries({ queryKey: ["settings"] });
  void queries.invalidateQueries({ queryKey: ["history"] });
  void queries.invalidateQueries({ queryKey: ["studio"] });
  await Promise.all(Object.entries(changed).map(([kind, ids]) => readAgain(kind, ids)));
}

let missed = false;
let stream: EventSource | null = null;
let failures = 0;

function listen(): void {
  stream?.close();
  stream = new EventSource("/api/events");
  stream.onopen = () => {
    const wasAway = failures > 0;
    failures = 0;
    answering.set(true);
    line.wake();
    // Whatever was told meanwhile was not heard.
    if (wasAway) catchUp();
  };
  stream.onmessage = ({ data }: MessageEvent<string>) => {
    heard(JSON.parse(data) as StudioEvent).catch(() => {
      missed = true;
    });
  };
  stream.onerror = () => {
    failures += 1;
    if (!passphraseAsked.get()) answering.set(false);
    // Where the stream was refused the browser does not try again by itself.
    if (stream?.readyState === EventSource.CLOSED && !passphraseAsked.get()) setTimeout(listen, pauseMs(failures));
  };
}

function catchUp(): void {
  if (waitingCount.get() > 0) missed = true;
  else void queries.invalidateQueries();
}

/** Begins listening, and sends what waited since the last visit. */
export function beginListening(): void {
  listen();
  line.wake();
  waitingCount.subscribe(() => {
    if (waitingCount.get() > 0 || !missed) return;
    missed = false;
    void queries.invalidateQueries();
  });
  passphraseAsked.subscribe(() => {
    if (passphraseAsked.get()) return;
    listen();
    line.wake();
    void queries.invalidateQueries();
  });
  addEventListener("online", () => {
    if (stream?.readyState !== EventSource.OPEN) listen();
    line.wake();
  });
}
