import { BadInput } from "../../../measures/bad-input.ts";
import type { KilnAnswers, KilnQuestion } from "./kiln-answers.ts";
import type { SentAnswer, SentQuestion } from "./kiln-worker.ts";

interface Waiting {
  readonly resolve: (answer: unknown) => void;
  readonly reject: (error: Error) => void;
}

let worker: Worker | null = null;
let count = 0;
const waiting = new Map<number, Waiting>();

/**
 * Asks about a loaded kiln, reckoned beside the page.
 *
 * @throws BadInput where it cannot be answered
 */
export function askKiln<Question extends KilnQuestion>(question: Question): Promise<KilnAnswers[Question["kind"]]> {
  count += 1;
  const sent: SentQuestion = { number: count, question };
  return new Promise((resolve, reject) => {
    waiting.set(sent.number, { resolve: (answer) => resolve(answer as KilnAnswers[Question["kind"]]), reject });
    running().postMessage(sent);
  });
}

function running(): Worker {
  if (worker) return worker;
  const made = new Worker(new URL("./kiln-worker.ts", import.meta.url), { type: "module" });
  made.addEventListener("message", ({ data }: MessageEvent<SentAnswer>) => {
    const asker = waiting.get(data.number);
    waiting.delete(data.number);
    if ("answer" in data) asker?.resolve(data.answer);
    else asker?.reject("refusal" in data ? new BadInput(data.refusal) : new Error(data.failure));
  });
  made.addEventListener("error", () => {
    for (const { reject } of waiting.values()) reject(new Error("The firing could not be reckoned here."));
    waiting.clear();
    made.terminate();
    worker = null;
  });
  worker = made;
  return made;
}
