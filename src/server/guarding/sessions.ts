import { createHmac, randomBytes, timingSafeEqual } from "node:crypto";
import type { Passphrase } from "./passphrase.ts";

export const SESSION_COOKIE = "wareboard-session";
export const SESSION_DAYS = 30;
const DAY_MS = 24 * 60 * 60_000;
const TOKEN = /^(\d{13,15})\.([A-Za-z0-9_-]{22})\.([A-Za-z0-9_-]{43})$/;

/**
 * Tells who has given the passphrase: a token of its end, a random word and a signature. The signing key is made of the
 * server's own key and the passphrase's hash, so that sessions outlive a restart and end with a new passphrase.
 */
export class Sessions {
  readonly #key: Buffer;
  readonly #ended = new Map<string, number>();

  constructor(key: Buffer, passphrase: Passphrase) {
    this.#key = createHmac("sha256", key).update("session").update(passphrase.hash).digest();
  }

  /** A new token. `now` in milliseconds. */
  begin(now: number): string {
    const body = `${now + SESSION_DAYS * DAY_MS}.${randomBytes(16).toString("base64url")}`;
    return `${body}.${this.#signature(body)}`;
  }

  /** Whether a token is one of ours and has not ended. */
  isOpen(token: string | undefined, now: number): boolean {
    const [, end, word, signature] = TOKEN.exec(token ?? "") ?? [];
    if (end === undefined || word === undefined || signature === undefined) return false;
    const wanted = Buffer.from(this.#signature(`${end}.${word}`));
    return timingSafeEqual(wanted, Buffer.from(signature)) && Number(end) > now && !this.#ended.has(word);
  }

  /** Ends a session before its time, until the server stops. */
  end(token: string | undefined, now: number): void {
    const [, end, word] = TOKEN.exec(token ?? "") ?? [];
    if (word === undefined || !this.isOpen(token, now)) return;
    for (const [each, until] of this.#ended) if (until <= now) this.#ended.delete(each);
    this.#ended.set(word, Number(end));
  }

  #signature(body: string): string {
    return createHmac("sha256", this.#key).update(body).digest("base64url");
  }
}
