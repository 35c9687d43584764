import type { Changed } from "../../studio/api/contract.ts";

/** A change of hers that is not saved yet. */
export interface WaitingCommand {
  /** Its place in the line: earlier ones sort before later ones. */
  readonly place: string;
  /** Makes it happen once, however often it is sent. */
  readonly key: string;
  readonly name: string;
  readonly input: unknown;
  /** What the screen's records were before it was shown as done, to put back where she takes it back. */
  readonly before: Changed;
  /** True once it was sent and no answer came: it may have arrived all the same. */
  readonly tried?: boolean;
  /** True where she took it back after it was tried: it is sent once more, to be sure, and undone. */
  readonly takenBack?: boolean;
}

/** What became of a command that was sent. */
export type Outcome<Answer> =
  | { readonly kind: "done"; readonly answer: Answer }
  | { readonly kind: "refused"; readonly error: Error }
  | { readonly kind: "away" };

const FIRST_PAUSE_MS = 500;
const LONGEST_PAUSE_MS = 30_000;

/** How long to wait before trying again, after so many tries in a row without an answer: 0.5 s, doubled up to 30 s. */
export const pauseMs = (triesWithoutAnswer: number): number =>
  Math.min(LONGEST_PAUSE_MS, FIRST_PAUSE_MS * 2 ** Math.max(0, triesWithoutAnswer - 1));

/**
 * A place after every place given before on this machine's clock, and after `last` even where the clock was set back.
 *
 * @param nowMs milliseconds since 1970
 * @param last the place given last, or null
 */
export function placeAfter(nowMs: number, last: string | null): string {
  const fromClock = `${String(Math.floor(nowMs)).padStart(15, "0")}-0000`;
  if (last === null || last < fromClock) return fromClock;
  const [time = "", count = "0"] = last.split("-");
  return `${time}-${String(Number(count) + 1).padStart(4, "0")}`;
}

/** The line in the order of sending. */
export const inOrder = (line: readonly WaitingCommand[]): WaitingCommand[] =>
  [...line].sort((a, b) => (a.place < b.place ? -1 : a.place > b.place ? 1 : 0));

/** The newest command of a scope that still waits and was not taken back, or null. */
export const newestOf = (
  line: readonly WaitingCommand[],
  scope: string,
  scopeOf: (name: string, input: unknown) => string,
): WaitingCommand | null =>
  inOrder(line).findLast(({ name, input, takenBack }) => !takenBack && scopeOf(name, input) === scope) ?? null;
