import { type Place, placeKey } from "../../../studio/loads/places.ts";
import type { Grade } from "../../../studio/records/faults.ts";
import type { Outcome } from "../../../studio/records/firing-parts.ts";

/** Outcomes by place. */
export const byPlace = (outcomes: readonly Outcome[] | undefined): ReadonlyMap<string, Outcome> =>
  new Map((outcomes ?? []).map((each) => [placeKey(each), each]));

type Keyed = Place & { readonly key: string };

/** How far she has come. */
export interface Progress {
  readonly judged: number;
  readonly pieces: number;
  readonly good: number;
  readonly second: number;
  readonly lost: number;
}

export function progressOf(pieces: readonly Keyed[], judged: ReadonlyMap<string, Outcome>): Progress {
  const grades = pieces.map(({ key }) => judged.get(key)?.grade ?? null);
  const count = (grade: Grade): number => grades.filter((each) => each === grade).length;
  const [good, second, lost] = [count("good"), count("second"), count("lost")];
  return { judged: good + second + lost, pieces: pieces.length, good, second, lost };
}

/** The pieces of some that nobody has judged. */
export const unjudged = <Piece extends Keyed>(
  pieces: readonly Piece[],
  judged: ReadonlyMap<string, Outcome>,
): Piece[] => pieces.filter(({ key }) => !judged.has(key));

/**
 * The piece to look at after one: the next on its level that nobody has judged, those before it after those behind it;
 * null where the level is done.
 */
export function nextUnjudged<Piece extends Keyed>(
  pieces: readonly Piece[],
  judged: ReadonlyMap<string, Outcome>,
  after: Keyed,
): Piece | null {
  const here = pieces.filter(({ level }) => level === after.level);
  const at = here.findIndex(({ key }) => key === after.key);
  const round = [...here.slice(at + 1), ...here.slice(0, Math.max(0, at))];
  return unjudged(round, judged)[0] ?? null;
}

/** The piece after or before one in the order of unpacking, on whichever level; the same at either end. */
export function neighbourPiece<Piece extends Keyed>(
  pieces: readonly Piece[],
  from: string | null,
  by: 1 | -1,
): Piece | null {
  const at = pieces.findIndex(({ key }) => key === from);
  if (at < 0) return pieces[by === 1 ? 0 : pieces.length - 1] ?? null;
  return pieces[at + by] ?? pieces[at] ?? null;
}
