import { createStore, del, entries, set, type UseStore } from "idb-keyval";
import type { WaitingCommand } from "./line.ts";
import type { OutboxPorts } from "./outbox.ts";

/** The line of waiting commands on this device, in IndexedDB; in memory alone where the browser keeps nothing. */
export function keptLine(): OutboxPorts<unknown>["kept"] {
  const memory = new Map<string, WaitingCommand>();
  let store: UseStore | null = null;
  let keeps = true;
  const tried = async <Result>(work: (store: UseStore) => Promise<Result>): Promise<Result | null> => {
    if (!keeps) return null;
    try {
      store ??= createStore("wareboard-outbox", "line");
      return await work(store);
    } catch {
      keeps = false;
      return null;
    }
  };
  return {
    all: async () => {
      const kept = await tried((where) => entries<string, WaitingCommand>(where));
      return kept === null ? [...memory.values()] : kept.map(([, command]) => command);
    },
    put: async (command) => {
      memory.set(command.place, command);
      await tried((where) => set(command.place, command, where));
    },
    takeOut: async (place) => {
      memory.delete(place);
      await tried((where) => del(place, where));
    },
  };
}
