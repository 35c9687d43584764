import { randomBytes } from "node:crypto";
import { expect, test } from "vitest";
import { BadInput } from "../../measures/bad-input.ts";
import { hashPassphrase } from "./passphrase.ts";
import { SESSION_DAYS, Sessions } from "./sessions.ts";

const NOW = Date.parse("2026-11-25T09:00:00.000Z");
const key = randomBytes(32);

test("a session outlives a restart with the same passphrase, and ends with another or with another key", async () => {
  const token = new Sessions(key, await hashPassphrase("four words of clay", key)).begin(NOW);
  const isOpen = async (words: string, with_: Buffer) =>
    new Sessions(with_, await hashPassphrase(words, with_)).isOpen(token, NOW);
  expect(await isOpen("four words of clay", key)).toBe(true);
  expect(await isOpen("four words of sand", key)).toBe(false);
  expect(await isOpen("four words of clay", randomBytes(32))).toBe(false);
});

test("nobody makes a token last longer", async () => {
  const sessions = new Sessions(key, await hashPassphrase("four words of clay", key));
  const token = sessions.begin(NOW);
  const later = token.replace(/^\d+/, (end) => String(Number(end) + 1));
  expect(sessions.isOpen(token, NOW)).toBe(true);
  expect(sessions.isOpen(later, NOW)).toBe(false);
  expect(sessions.isOpen(token, NOW + SESSION_DAYS * 86_400_000)).toBe(false);
  for (const odd of [undefined, "", ".", "1.2.3", token.slice(1)]) expect(sessions.isOpen(odd, NOW)).toBe(false);
});

test("a passphrase is told from another, however its letters are made up, and a short one is refused", async () => {
  const { matches } = await hashPassphrase("crème brûlée glaze", key);
  expect(await matches("crème brûlée glaze".normalize("NFD"))).toBe(true);
  expect(await matches("creme brulee glaze")).toBe(false);
  expect(await matches("")).toBe(false);
  await expect(hashPassphrase("eleven char", key)).rejects.toThrow(BadInput);
});
