import type { Worker } from "node:worker_threads";
import type { ThreadName, Threads } from "./ready-threads.ts";

/** The threads one planning has taken. */
export class TakenThreads {
  readonly #from: Threads;
  /** Each with whether it has answered. */
  readonly #taken: { readonly name: ThreadName; readonly worker: Worker; answered: boolean }[] = [];

  constructor(from: Threads) {
    this.#from = from;
  }

  /** Gives a thread a task; `hear` is told all it says, and tells the answer. */
  ask<Said, Answer>(
    name: ThreadName,
    task: unknown,
    hear: (said: Said, tell: (answer: Answer) => void) => void,
  ): Promise<Answer> {
    const worker = this.#from.take(name);
    const taken = { name, worker, answered: false };
    this.#taken.push(taken);
    return new Promise((resolve, reject) => {
      const onMessage = (said: Said): void => hear(said, answer);
      const onExit = (code: number): void =>
        reject(new Error(`A planning thread (${name}) ended with code ${code} before it answered.`));
      const answer = (of: Answer): void => {
        worker.off("message", onMessage).off("error", reject).off("exit", onExit);
        taken.answered = true;
        resolve(of);
      };
      worker.on("message", onMessage).on("error", reject).on("exit", onExit);
      worker.postMessage(task);
    });
  }

  /** Gives back those that have answered; whatever still works on is ended. */
  async letGo(): Promise<void> {
    const done = this.#taken.map(async ({ name, worker, answered }) => {
      if (answered) await this.#from.giveBack(name, worker);
      else await worker.terminate();
    });
    await Promise.all(done);
  }
}
