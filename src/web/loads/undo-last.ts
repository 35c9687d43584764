import type { CommandAnswer } from "../../studio/api/contract.ts";
import { tell, wordsOf } from "../parts/index.ts";
import { ask } from "../studio/client.ts";
import { showAnswer } from "../studio/sending.ts";

/** Takes back the newest thing done in a scope, so many times; for the Undo button of a notice. */
export async function undoLast(scope: string, times = 1): Promise<void> {
  try {
    for (let i = 0; i < times; i += 1) showAnswer(await ask<CommandAnswer>("/undo", { body: { scope } }));
  } catch (error) {
    tell(wordsOf(error));
  }
}
