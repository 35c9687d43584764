import type { WareFile } from "../../ware/ware.ts";

/** How many of what: "1 lid", "6 espresso cups", "3 dishes"; a name that is more than plain words stays as it is. */
export function countOf(count: number, name: string): string {
  if (count === 1) return `1 ${name}`;
  return /^[\p{L} -]+$/u.test(name) ? `${count} ${plural(name)}` : `${count} × ${name}`;
}

/** English plurals of the trade's words; a name in another language gets an s that does no harm. */
function plural(name: string): string {
  if (/(s|x|z|ch|sh)$/i.test(name)) return /ware$|s$/i.test(name) ? name : `${name}es`;
  if (/[^aeiou]y$/i.test(name)) return `${name.slice(0, -1)}ies`;
  return `${name}s`;
}

/** Batches in a sentence: one by its name and count, several by how many. */
export function batchesInWords(wares: readonly Pick<WareFile, "name" | "count">[]): string {
  const [first, ...rest] = wares;
  if (!first) return "nothing";
  return rest.length === 0 ? countOf(first.count, first.name) : `${wares.length} batches`;
}

/** The first words of a longer text. */
export function opening(text: string): string {
  const line = text.trim().split(/\s*\n/)[0] ?? "";
  return line.length <= 40 ? line : `${line.slice(0, 39).trimEnd()}…`;
}

/** Sentences after one another; one that ends with a full stop of its own, as a name may, gets no second. */
export function inSentences(first: string, ...more: readonly string[]): string {
  return [first, ...more].map((each, i, all) => (i === all.length - 1 ? each : ended(each))).join(" ");
}

/** Words with a full stop after them. */
const ended = (words: string): string => (words.endsWith(".") ? words : `${words}.`);

/** "the count, the height and the note". */
export const listed = (words: readonly string[]): string =>
  words.length < 2 ? (words[0] ?? "") : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;
