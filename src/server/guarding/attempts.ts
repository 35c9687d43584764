const FREE_ATTEMPTS = 5;
const FIRST_WAIT_MS = 60_000;
const LONGEST_WAIT_MS = 60 * 60_000;
/** Forgotten after so long without another attempt. */
const MEMORY_MS = 24 * 60 * 60_000;
const MOST_REMEMBERED = 10_000;

interface Tries {
  failures: number;
  readonly times: number[];
  waitUntil: number;
  latest: number;
}

/**
 * Counts wrong passphrases by address. Five a minute are looked at; who goes past them waits a minute, and twice as long
 * each time after, up to an hour. Time comes in as milliseconds.
 */
export class Attempts {
  readonly #records = new Map<string, Tries>();

  /** How long this address has to wait before it may try, in milliseconds; 0 where it may. */
  waitMs(address: string, now: number): number {
    return Math.max(0, (this.#records.get(address)?.waitUntil ?? 0) - now);
  }

  /** Writes down that a try was let through: also before it is known to be wrong, so that many at once count. */
  tried(address: string, now: number): void {
    this.#forgetOld(now);
    const record = this.#records.get(address) ?? { failures: 0, times: [], waitUntil: 0, latest: now };
    record.latest = now;
    record.times.push(now);
    while (record.times[0] !== undefined && record.times[0] <= now - FIRST_WAIT_MS) record.times.shift();
    if (record.times.length >= FREE_ATTEMPTS) {
      record.waitUntil = now + Math.min(LONGEST_WAIT_MS, FIRST_WAIT_MS * 2 ** record.failures);
      record.failures++;
      record.times.length = 0;
    }
    this.#records.set(address, record);
  }

  /** The passphrase was right. */
  succeeded(address: string): void {
    this.#records.delete(address);
  }

  #forgetOld(now: number): void {
    if (this.#records.size < MOST_REMEMBERED) return;
    for (const [address, { latest }] of this.#records) if (latest < now - MEMORY_MS) this.#records.delete(address);
    // Still too many: somebody has addresses without end. The oldest go.
    for (const address of this.#records.keys()) {
      if (this.#records.size < MOST_REMEMBERED) return;
      this.#records.delete(address);
    }
  }
}
