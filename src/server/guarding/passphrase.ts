import { createHmac, scrypt, timingSafeEqual } from "node:crypto";
import { promisify } from "node:util";
import { BadInput } from "../../measures/bad-input.ts";

export const SHORTEST_PASSPHRASE = 12;
const LONGEST_PASSPHRASE = 200;
// OWASP Password Storage Cheat Sheet: scrypt with N = 2^17, r = 8, p = 1; 128 MB and about a third of a second a try.
const COST = { N: 2 ** 17, r: 8, p: 1, maxmem: 256 * 1024 * 1024 };
const HASH_BYTES = 32;

const derive = promisify<string, Buffer, number, typeof COST, Buffer>(scrypt);

/** A passphrase as its hash; the words themselves are let go. */
export interface Passphrase {
  readonly hash: Buffer;
  /** Whether these are the words. Takes the same time whether they are or not. */
  readonly matches: (words: string) => Promise<boolean>;
}

/**
 * Hashes a passphrase.
 *
 * @param key the server's own random key, from which the salt is made: so the same words give the same hash after a
 *   restart, and open sessions stay open
 * @throws BadInput where it is too short to keep neighbours out
 */
export async function hashPassphrase(words: string, key: Buffer): Promise<Passphrase> {
  const length = [...words].length;
  if (length < SHORTEST_PASSPHRASE || length > LONGEST_PASSPHRASE) {
    throw new BadInput({
      code: "wrong-passphrase-length",
      path: "passphrase",
      found: length === 0 ? "none" : `${length} characters`,
      expected: `${SHORTEST_PASSPHRASE} to ${LONGEST_PASSPHRASE} characters: four words that do not belong together will do`,
    });
  }
  const salt = createHmac("sha256", key).update("passphrase salt").digest();
  const hashOf = (text: string): Promise<Buffer> => derive(text.normalize("NFC"), salt, HASH_BYTES, COST);
  const hash = await hashOf(words);
  return {
    hash,
    matches: async (text) => timingSafeEqual(await hashOf(text.slice(0, LONGEST_PASSPHRASE * 2)), hash),
  };
}
