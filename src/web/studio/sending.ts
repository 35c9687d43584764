import type { CommandAnswer, HistoryEntry } from "../../studio/api/contract.ts";
import { type AnyChanged, queries, showChanged } from "./cache.ts";
import { ask, StudioAway, StudioRefusal } from "./client.ts";
import { waitingCount } from "./connection.ts";
import { keptLine } from "./kept-line.ts";
import type { Outcome, WaitingCommand } from "./line.ts";
import { outbox } from "./outbox.ts";
import { scopeOf } from "./scope-of.ts";

// The outbox as it stands in this browser, and what its answers do to the screens.

type Told = { readonly command: WaitingCommand; readonly outcome: Outcome<CommandAnswer> };
type Heard = (told: Told) => void;

const waiters = new Map<string, Heard>();
const refusalListeners = new Set<(command: WaitingCommand, error: Error) => void>();
const channel = typeof BroadcastChannel === "undefined" ? null : new BroadcastChannel("wareboard-outbox");
let wakeUp: () => void = () => {};
/** Answers that wait until the line is empty: what she did since must not blink back meanwhile. */
let held: AnyChanged = {};
/** Entries of this browser's own doing: the studio tells of them once more. An entry's id is its command's key. */
export const shownEntries = new Set<string>();

async function outcomeOf(question: () => Promise<CommandAnswer>): Promise<Outcome<CommandAnswer>> {
  try {
    return { kind: "done", answer: await question() };
  } catch (error) {
    if (error instanceof StudioAway) return { kind: "away" };
    return { kind: "refused", error: error instanceof Error ? error : new Error(String(error)) };
  }
}

async function undoIfNewest(command: WaitingCommand, answer: CommandAnswer): Promise<CommandAnswer> {
  const scope = scopeOf(command.name, command.input);
  const history = await ask<HistoryEntry[]>(`/history?scope=${encodeURIComponent(scope)}`);
  const newest = history.find(({ undone }) => !undone);
  // Undone already, or another change came on top of it: leave what is there.
  return newest?.id === answer.entry.id ? ask<CommandAnswer>("/undo", { body: { scope } }) : answer;
}

/** Without locks (a page that came over plain http from another machine) each page sends; keys keep that harmless. */
const alone = async (work: () => Promise<void>): Promise<void> => {
  if (typeof navigator.locks === "undefined") return work();
  await navigator.locks.request("wareboard-outbox", work);
};

/** The outbox of this browser. */
export const line = outbox<CommandAnswer>({
  kept: keptLine(),
  send: ({ name, key, input }) => {
    shownEntries.add(key);
    return outcomeOf(() => ask(`/commands/${name}`, { body: { key, input } }));
  },
  sendUndo: (command, answer) => outcomeOf(() => undoIfNewest(command, answer)),
  alone,
  nowMs: () => Date.now(),
  pause: (ms) =>
    new Promise((resolve) => {
      const timer = setTimeout(resolve, ms);
      wakeUp = () => {
        clearTimeout(timer);
        resolve();
      };
    }),
  wake: () => {
    wakeUp();
    channel?.postMessage({ kind: "wake" });
  },
  tell: (command, outcome) => {
    hear({ command, outcome });
    const plain =
      outcome.kind === "refused"
        ? { kind: "refused", error: { ...outcome.error, message: outcome.error.message } }
        : outcome;
    channel?.postMessage({ kind: "told", told: { command, outcome: plain } });
  },
  counted: (waiting) => {
    waitingCount.set(waiting);
    if (waiting === 0) showHeld();
  },
});

channel?.addEventListener("message", ({ data }: MessageEvent<{ kind: string; told?: Told }>) => {
  if (data.kind === "wake") wakeUp();
  if (data.told) hear(asHere(data.told));
  void line.line();
});

/** An error that came from another page has lost its class. */
const asHere = ({ command, outcome }: Told): Told => ({
  command,
  outcome:
    outcome.kind === "refused"
      ? { kind: "refused", error: new StudioRefusal(outcome.error as StudioRefusal) }
      : outcome,
});

function hear(told: Told): void {
  const { command, outcome } = told;
  if (outcome.kind === "done") {
    shownEntries.add(outcome.answer.entry.id);
    showAnswer(outcome.answer);
  }
  if (outcome.kind === "refused") {
    // What was shown as done is not: look again at what there is.
    void queries.invalidateQueries();
    if (!waiters.has(command.key)) for (const listener of refusalListeners) listener(command, outcome.error);
  }
  waiters.get(command.key)?.(told);
  waiters.delete(command.key);
}

/** Shows what came of a command: new records at once, changed ones when nothing of hers waits any more. */
export function showAnswer({ changed, settingsChanged }: CommandAnswer): void {
  const merged = Object.entries(changed as AnyChanged).map(([kind, records]) => [kind, { ...held[kind], ...records }]);
  held = { ...held, ...Object.fromEntries(merged) };
  if (waitingCount.get() === 0) showHeld();
  else showNew(changed as AnyChanged);
  if (settingsChanged) void queries.invalidateQueries({ queryKey: ["settings"] });
  void queries.invalidateQueries({ queryKey: ["history"] });
  void queries.invalidateQueries({ queryKey: ["studio"] });
}

function showHeld(): void {
  const now = held;
  held = {};
  showChanged(now);
}

function showNew(changed: AnyChanged): void {
  for (const [kind, records] of Object.entries(changed)) {
    const list = queries.getQueryData<readonly { id: string }[]>([kind]) ?? [];
    const there = new Set(list.map(({ id }) => id));
    const added = Object.entries(records).filter(([id, record]) => record !== null && !there.has(id));
    if (added.length > 0) showChanged({ [kind]: Object.fromEntries(added) });
  }
}

/** Comes back when the studio has done or refused the command, however long that takes. */
export const whenTold = (key: string): Promise<Told> =>
  new Promise((resolve) => {
    waiters.set(key, resolve);
  });

/** Tells whoever waits for a command that it was taken back. */
export function tellTakenBack(command: WaitingCommand): void {
  waiters.get(command.key)?.({ command, outcome: { kind: "refused", error: new TakenBack() } });
  waiters.delete(command.key);
}

/** She took it back before it was saved. */
export class TakenBack extends Error {
  constructor() {
    super("Taken back before it was saved.");
    this.name = "TakenBack";
  }
}

/** Tells of commands that were refused after whoever gave them had gone: before a reload, on another page. */
export function onLateRefusal(listener: (command: WaitingCommand, error: Error) => void): () => void {
  refusalListeners.add(listener);
  return () => refusalListeners.delete(listener);
}
