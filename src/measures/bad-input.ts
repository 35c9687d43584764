/** Facts of one fault in what somebody gave us. The sentence is made from them, in one place. */
export interface BadInputFacts {
  /** A stable word for machines, such as `unknown-field`. */
  readonly code: string;
  /** Where it is: `ware[2].heightMm`, a line of a file, or an option's name. */
  readonly path: string;
  /** What was found there, as a person would write it. */
  readonly found: string;
  /** What would do. */
  readonly expected: string;
  /** The file it stands in, where there is one and the path is a field inside it. */
  readonly file?: string;
}

/**
 * Thrown for input that cannot be used. One error names one field: its path, what was found and what would do.
 * The command line turns it into exit code 2; the server into a refusal.
 */
export class BadInput extends Error {
  readonly code: string;
  readonly path: string;
  readonly found: string;
  readonly expected: string;
  readonly file: string | undefined;

  constructor(facts: BadInputFacts) {
    super(sentence(facts));
    this.name = "BadInput";
    this.code = facts.code;
    this.path = facts.path;
    this.found = facts.found;
    this.expected = facts.expected;
    this.file = facts.file;
  }

  /** The facts and their sentence, ready for JSON. */
  toJSON(): BadInputFacts & { message: string } {
    const { code, path, found, expected, file, message } = this;
    return { code, path, found, expected, ...(file === undefined ? {} : { file }), message };
  }
}

function sentence(facts: BadInputFacts): string {
  const where = [facts.file, facts.path].filter(Boolean).join(", ");
  return `${where === "" ? "" : `${where}: `}found ${facts.found}; expected ${facts.expected}.`;
}

/** How a value found in a file is shown inside an error: short, on one line. */
export function shown(value: unknown): string {
  if (value === undefined) return "nothing";
  if (typeof value === "number") return String(value);
  const text = JSON.stringify(value) ?? String(value);
  return text.length > 60 ? `${text.slice(0, 57)}…` : text;
}
