/** What is looked through: a name, and the group it stands in. */
export interface Findable {
  readonly name: string;
  readonly group: string;
}

/**
 * What matches what was typed, the best first: every word typed must begin a word of the name or group, stand inside one,
 * or be its letters in order. Nothing typed: everything, as it stands.
 */
export function findActions<Item extends Findable>(items: readonly Item[], typed: string): Item[] {
  const words = wordsOf(typed);
  if (words.length === 0) return [...items];
  const scored = items.flatMap((item, place) => {
    const name = wordsOf(item.name);
    const all = [...name, ...wordsOf(item.group)];
    const scores = words.map((word) => Math.max(score(word, name), score(word, all) * 0.5));
    const worst = Math.min(...scores);
    return worst === 0 ? [] : [{ item, place, total: scores.reduce((sum, each) => sum + each, 0) }];
  });
  return scored.sort((a, b) => b.total - a.total || a.place - b.place).map(({ item }) => item);
}

const wordsOf = (text: string): string[] =>
  text
    .normalize("NFD")
    .replaceAll(/\p{M}/gu, "")
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== "");

const score = (typed: string, words: readonly string[]): number =>
  Math.max(0, ...words.map((word) => likeness(typed, word)));

function likeness(typed: string, word: string): number {
  if (word === typed) return 4;
  if (word.startsWith(typed)) return 3;
  if (word.includes(typed)) return 2;
  return typed.length > 1 && lettersInOrder(typed, word) ? 1 : 0;
}

function lettersInOrder(typed: string, word: string): boolean {
  let at = 0;
  for (const letter of word) if (letter === typed[at]) at += 1;
  return at === typed.length;
}
