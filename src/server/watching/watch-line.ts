import { Worker } from "node:worker_threads";
import type { WatchedFiring } from "../../studio/firings/watched-firing.ts";
import type { WatchLook, WatchTask } from "./watch-messages.ts";

/** The line to the thread in which firings are watched. The thread is started when the first one is. */
export class WatchLine {
  readonly #onLost: (error: Error) => void;
  readonly #asked = new Map<number, (look: WatchLook) => void>();
  #thread: Worker | null = null;
  #asks = 0;

  /** @param onLost called where the thread is gone: whatever it watched has to be begun anew */
  constructor(onLost: (error: Error) => void) {
    this.#onLost = onLost;
  }

  begin(id: string, firing: WatchedFiring): void {
    this.#send({ kind: "begin", id, firing });
  }

  /** Readings in the order in which they came, minutes since the firing's start. */
  read(id: string, minutes: Float64Array, tempC: Float64Array): void {
    this.#send({ kind: "read", id, minutes, tempC });
  }

  shutOff(id: string, minute: number): void {
    this.#send({ kind: "shut off", id, minute });
  }

  end(id: string): void {
    if (this.#thread !== null) this.#send({ kind: "end", id });
  }

  /** How a firing stands, it being this minute now. */
  look(id: string, nowMin: number): Promise<WatchLook> {
    const ask = ++this.#asks;
    return new Promise((resolve) => {
      this.#asked.set(ask, resolve);
      this.#send({ kind: "look", id, ask, nowMin });
    });
  }

  async close(): Promise<void> {
    const thread = this.#thread;
    this.#thread = null;
    await thread?.terminate();
    this.#letGo();
  }

  #send(task: WatchTask): void {
    this.#thread ??= this.#start();
    this.#thread.postMessage(task);
  }

  #start(): Worker {
    const file = `./watch-thread.${import.meta.url.endsWith(".ts") ? "ts" : "js"}`;
    const thread = new Worker(new URL(file, import.meta.url));
    thread.unref();
    thread.on("message", (look: WatchLook) => {
      this.#asked.get(look.ask)?.(look);
      this.#asked.delete(look.ask);
    });
    thread.on("error", (error) => {
      if (this.#thread !== thread) return;
      this.#thread = null;
      this.#letGo();
      this.#onLost(error as Error);
    });
    return thread;
  }

  /** Whoever waits for an answer gets none. */
  #letGo(): void {
    for (const [ask, resolve] of this.#asked) resolve({ ask, state: null, failed: null });
    this.#asked.clear();
  }
}
