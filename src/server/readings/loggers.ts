import { createHash, randomBytes, timingSafeEqual } from "node:crypto";
import type { LoggerRecord } from "../../studio/records/logger-record.ts";
import type { Studio } from "../studio.ts";

const TOKEN_BYTES = 32;
/** Another program may have added or taken out a logger in the same store. */
const BELIEVED_MS = 10_000;

/** A new token and what is kept of it. */
export function newToken(): { readonly token: string; readonly tokenHash: string } {
  const token = randomBytes(TOKEN_BYTES).toString("base64url");
  return { token, tokenHash: hashOf(token).toString("hex") };
}

/** Who sends readings, as the studio knows them. */
export class Loggers {
  readonly #studio: Studio;
  readonly #ended: () => void;
  #known: { readonly all: Promise<readonly LoggerRecord[]>; readonly since: number } | null = null;

  constructor(studio: Studio) {
    this.#studio = studio;
    this.#ended = studio.news.listen(({ entryId, changed }) => {
      if (entryId === "" || changed.loggers !== undefined) this.#known = null;
    });
  }

  /** The logger of a token, or null. Takes as long whichever it is, and for a token that is none. */
  async ofToken(token: string): Promise<LoggerRecord | null> {
    const hash = hashOf(token);
    let found: LoggerRecord | null = null;
    for (const logger of await this.#all()) {
      if (timingSafeEqual(hash, Buffer.from(logger.tokenHash, "hex"))) found = logger;
    }
    return found;
  }

  /** The logger that bears a name, or has it for its id; null where none or several do. */
  async named(name: string): Promise<LoggerRecord | null> {
    const found = (await this.#all()).filter((logger) => logger.name === name || logger.id === name);
    return found.length === 1 ? (found[0] as LoggerRecord) : null;
  }

  close(): void {
    this.#ended();
  }

  #all(): Promise<readonly LoggerRecord[]> {
    const now = Date.parse(this.#studio.now());
    if (this.#known === null || now - this.#known.since > BELIEVED_MS) {
      const all = this.#studio.store.read((records) => records.loggers.list());
      const known = { all, since: now };
      this.#known = known;
      // A look that failed is not believed at all.
      all.catch(() => {
        if (this.#known === known) this.#known = null;
      });
    }
    return this.#known.all;
  }
}

const hashOf = (token: string): Buffer => createHash("sha256").update(token).digest();
