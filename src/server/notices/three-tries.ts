import { BadInput } from "../../measures/bad-input.ts";
import { NotSent } from "./send-webhook.ts";

/** How long to wait before the second try, and before the third. */
export const PAUSES_MS: readonly number[] = [5_000, 60_000];

/**
 * Tries to send, and again after growing pauses.
 *
 * @param wait comes back after so long, or at once where the server stops
 * @throws what the last try threw
 */
export async function threeTries(
  send: () => Promise<void>,
  wait: (ms: number) => Promise<void>,
  pausesMs = PAUSES_MS,
): Promise<void> {
  for (const pauseMs of [...pausesMs, null]) {
    try {
      return await send();
    } catch (error) {
      const inVain = error instanceof BadInput || (error instanceof NotSent && !error.mayHelp);
      if (pauseMs === null || inVain) throw error;
      await wait(pauseMs);
    }
  }
}
