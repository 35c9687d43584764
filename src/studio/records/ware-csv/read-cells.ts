import { BadInput, shown } from "../../../measures/bad-input.ts";

/** A number with a point, or a comma where that cannot mean thousands. @throws BadInput */
export function readNumber(cell: string, heading: string): number {
  const plain = cell
    .trim()
    .replace("−", "-")
    .replace(/^(-?\d+),(\d{1,2}|\d{4,})$/, "$1.$2");
  if (/^-?(\d+\.?\d*|\.\d+)$/.test(plain)) return Number(plain);
  const expected = "a number such as 12 or 2.5";
  throw new BadInput({ code: "not-a-number", path: heading, found: shown(cell.trim()), expected });
}

/** The word meant, in capitals or not. @throws BadInput */
export function oneOf<const Word extends string>(words: readonly Word[], cell: string, heading: string): Word {
  const word = words.find((each) => each === cell.trim().toLowerCase());
  if (word !== undefined) return word;
  throw new BadInput({ code: "wrong-value", path: heading, found: shown(cell.trim()), expected: words.join(" or ") });
}

/** What the record of an id is called. */
export const nameOf = (records: readonly { id: string; name: string }[], id: string | null): string | undefined =>
  records.find((record) => record.id === id)?.name;

/** The record called so, capitals and spaces aside. @throws BadInput where two are */
export function named<R extends { name: string }>(records: readonly R[], cell: string, heading: string): R | undefined {
  const plain = (name: string): string => name.trim().toLowerCase();
  const [found, other] = records.filter(({ name }) => plain(name) === plain(cell));
  if (!other) return found;
  const expected = "a name that only one of them has; rename one, or choose it in the list";
  throw new BadInput({ code: "two-of-a-name", path: heading, found: shown(cell), expected });
}
