import { Worker } from "node:worker_threads";

/** The programs a planning thread runs: each takes one task after another as a message. */
export type ThreadName = "plan-worker" | "bound-worker";

/** Where the threads of a planning come from, and where each goes once it has answered. */
export interface Threads {
  take(name: ThreadName): Worker;
  giveBack(name: ThreadName, worker: Worker): Promise<void>;
}

/** Starts each thread when it is wanted and ends it when it has answered. */
export const NEW_THREADS: Threads = {
  take: startThread,
  giveBack: async (_name, worker) => {
    await worker.terminate();
  },
};

/**
 * Keeps some threads ready. Starting one costs a fifth of a second before the first plan is seen; one that has planned
 * before is quicker still. They do not keep the process from ending.
 */
export class ReadyThreads implements Threads {
  readonly #kept: Readonly<Record<ThreadName, number>>;
  readonly #idle: Record<ThreadName, Worker[]> = { "plan-worker": [], "bound-worker": [] };
  #isOver = false;

  /** @param kept how many of each are kept; more are started where more are asked for */
  constructor(kept: Readonly<Record<ThreadName, number>>) {
    this.#kept = kept;
  }

  /** Starts what is missing. */
  makeReady(): void {
    for (const name of Object.keys(this.#kept) as ThreadName[]) {
      while (!this.#isOver && this.#idle[name].length < this.#kept[name]) this.#rest(name, startThread(name));
    }
  }

  take(name: ThreadName): Worker {
    for (let worker = this.#idle[name].pop(); worker; worker = this.#idle[name].pop()) {
      if (hasEnded(worker)) continue;
      worker.ref();
      return worker;
    }
    return startThread(name);
  }

  async giveBack(name: ThreadName, worker: Worker): Promise<void> {
    if (this.#isOver || this.#idle[name].length >= this.#kept[name]) await worker.terminate();
    else if (!hasEnded(worker)) this.#rest(name, worker);
  }

  /** Ends those that rest, and from now on each that is given back. */
  async end(): Promise<void> {
    this.#isOver = true;
    await Promise.all(
      Object.values(this.#idle).flatMap((workers) => workers.splice(0).map((worker) => worker.terminate())),
    );
  }

  #rest(name: ThreadName, worker: Worker): void {
    worker.unref();
    this.#idle[name].push(worker);
  }
}

/** Node gives a thread that is gone the number −1. */
const hasEnded = (worker: Worker): boolean => worker.threadId === -1;

function startThread(name: ThreadName): Worker {
  const worker = new Worker(new URL(`./${name}${import.meta.url.endsWith(".ts") ? ".ts" : ".js"}`, import.meta.url));
  // Whoever gave it a task hears of it too; one that fails while it rests is not taken again.
  worker.on("error", () => {});
  return worker;
}
