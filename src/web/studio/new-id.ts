const LETTERS = "abcdefghijkmnpqrstuvwxyz23456789";

/**
 * An id never used before: 20 letters and digits, 100 bits of chance. None of them can be mistaken for another.
 * (`crypto.randomUUID` is missing on a page that came over plain http from another machine, as at the kiln.)
 */
export function newId(): string {
  const chance = crypto.getRandomValues(new Uint8Array(20));
  return Array.from(chance, (byte) => LETTERS[byte % LETTERS.length]).join("");
}
