import type { ErrorAnswer } from "../../studio/api/contract.ts";
import { StudioAway, StudioRefusal } from "./client.ts";
import { passphraseAsked } from "./connection.ts";

/**
 * Gives the studio its passphrase; from then on this device is known.
 *
 * @throws StudioRefusal where it was the wrong one, or was tried too often; StudioAway where the studio does not answer
 */
export async function openSession(passphrase: string): Promise<void> {
  const answer = await fetch("/api/session", {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify({ passphrase }),
  }).catch(() => {
    throw new StudioAway();
  });
  if (answer.ok) return passphraseAsked.set(false);
  if (answer.status >= 500) throw new StudioAway();
  const message =
    answer.status === 429 ? "Tried too often. Wait a minute and try again." : "That was not the passphrase.";
  const said = (await answer.json().catch(() => null)) as ErrorAnswer | null;
  throw new StudioRefusal({ code: "wrong-passphrase", path: "", found: "", expected: "", ...said?.error, message });
}
