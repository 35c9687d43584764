import { request as plainRequest } from "node:http";
import { request as encryptedRequest } from "node:https";
import { type WebhookPlace, webhookPlace } from "./webhook-address.ts";

const LONGEST_MS = 10_000;

/** Why something could not be sent, and whether trying again may help. */
export class NotSent extends Error {
  readonly mayHelp: boolean;

  constructor(message: string, mayHelp: boolean) {
    super(message);
    this.name = "NotSent";
    this.mayHelp = mayHelp;
  }
}

/**
 * Posts JSON to the one address she set. Whatever it answers, nothing more is asked of anybody: no redirect is followed,
 * no answer read.
 *
 * @throws NotSent where it did not say that it has it; BadInput where it may not be sent there
 */
export async function sendWebhook(address: string, content: object, longestMs = LONGEST_MS): Promise<void> {
  const place = await webhookPlace(address);
  const status = await post(place, JSON.stringify(content), longestMs);
  if (status >= 200 && status < 300) return;
  if (status >= 300 && status < 400)
    throw new NotSent(`it answered ${status}, a way to elsewhere, not followed`, false);
  throw new NotSent(`it answered ${status}`, status >= 500 || status === 429 || status === 408);
}

function post({ url, address, family }: WebhookPlace, body: string, longestMs: number): Promise<number> {
  const request = url.protocol === "https:" ? encryptedRequest : plainRequest;
  return new Promise((resolve, reject) => {
    const asked = request(
      url,
      {
        method: "POST",
        headers: { "content-type": "application/json", "content-length": Buffer.byteLength(body) },
        agent: false,
        signal: AbortSignal.timeout(longestMs),
        // Its name was looked up and looked at before; asked again, it might name another.
        lookup: (_host, options, found) => {
          if (options.all === true) (found as unknown as Found)(null, [{ address, family }]);
          else found(null, address, family);
        },
      },
      (answer) => {
        answer.destroy();
        resolve(answer.statusCode ?? 0);
      },
    );
    asked.on("error", (error: NodeJS.ErrnoException) => {
      const why = error.name === "AbortError" || error.name === "TimeoutError" ? "it did not answer in time" : null;
      reject(new NotSent(why ?? (error.message || String(error.code)), true));
    });
    asked.end(body);
  });
}

type Found = (error: null, addresses: readonly { address: string; family: number }[]) => void;
