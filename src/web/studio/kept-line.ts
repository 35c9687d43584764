import { createStore, entries, promisifyRequest, set, type UseStore } from "idb-keyval";
import type { WaitingCommand } from "./line.ts";
import type { OutboxPorts } from "./outbox.ts";

type Change = (command: WaitingCommand) => WaitingCommand | null;

/** The line of waiting commands on this device, in IndexedDB; in memory alone where the browser keeps nothing. */
export function keptLine(): OutboxPorts<unknown>["kept"] {
  const memory = new Map<string, WaitingCommand>();
  let store: UseStore | null = null;
  let keeps = true;
  const kept = async <Result>(work: (store: UseStore) => Promise<Result>, otherwise: () => Result): Promise<Result> => {
    if (!keeps) return otherwise();
    try {
      store ??= createStore("wareboard-outbox", "line");
      return await work(store);
    } catch {
      keeps = false;
      return otherwise();
    }
  };
  return {
    all: () =>
      kept(
        async (where) => (await entries<string, WaitingCommand>(where)).map(([, command]) => command),
        () => [...memory.values()],
      ),
    put: (command) =>
      kept(
        (where) => set(command.place, command, where),
        () => {
          memory.set(command.place, command);
        },
      ),
    change: (place, change) =>
      kept(
        (where) => changeKept(where, place, change),
        () => changeIn(memory, place, change),
      ),
  };
}

/** One transaction: no other page gets in between. */
const changeKept = (store: UseStore, place: string, change: Change): Promise<WaitingCommand | null> =>
  store(
    "readwrite",
    (commands) =>
      new Promise((resolve, reject) => {
        const asked: IDBRequest<WaitingCommand | undefined> = commands.get(place);
        asked.onerror = () => reject(asked.error);
        asked.onsuccess = () => {
          const was = asked.result ?? null;
          const now = was && change(was);
          if (now) commands.put(now, place);
          else if (was) commands.delete(place);
          resolve(promisifyRequest(commands.transaction).then(() => was));
        };
      }),
  );

function changeIn(memory: Map<string, WaitingCommand>, place: string, change: Change): WaitingCommand | null {
  const was = memory.get(place) ?? null;
  const now = was && change(was);
  if (now) memory.set(place, now);
  else memory.delete(place);
  return was;
}
