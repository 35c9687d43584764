import { type Place, placeKey } from "../loads/places.ts";
import type { Becomes } from "../records/becomes.ts";
import type { FaultName, Grade } from "../records/faults.ts";
import type { Outcome } from "../records/firing-parts.ts";
import type { FiringRecord } from "../records/firing-record.ts";

/** What is said of a piece at a moment. */
export interface Judged extends Place {
  /** Null takes back what was said before. */
  readonly grade: Grade | null;
  readonly faults?: readonly FaultName[] | undefined;
  readonly note?: string | undefined;
  /** What it becomes, where she says so. */
  readonly becomes?: Becomes | undefined;
  readonly at: string;
}

type Judgements = Pick<FiringRecord, "outcomes" | "takenBack">;

/**
 * Judgements merged into a firing's own, in whatever order they come: of two words on one piece the later counts, and of
 * two at one moment the one that came last. One that was taken back leaves a mark, so that an older one which comes late
 * from another phone does not count again.
 *
 * @param now no clock of another device is believed past this moment
 */
export function mergeOutcomes(
  { outcomes = [], takenBack = [] }: Judgements,
  said: readonly Judged[],
  now: string,
): Judgements & { readonly outcomes: Outcome[] } {
  const latest = new Map<string, Judged>();
  const hear = (word: Judged): void => {
    const before = latest.get(placeKey(word));
    if (!before || before.at <= word.at) latest.set(placeKey(word), word);
  };
  for (const mark of takenBack) hear({ ...mark, grade: null });
  for (const outcome of outcomes) hear(outcome);
  for (const word of said) hear({ ...word, at: word.at > now ? now : word.at });
  const inOrder = [...latest.values()].sort((a, b) => a.level - b.level || a.placement - b.placement);
  const out = inOrder
    .filter(({ grade }) => grade === null)
    .map(({ level, placement, at }) => ({ level, placement, at }));
  return {
    outcomes: inOrder.flatMap(outcomeOf),
    ...(out.length > 0 || takenBack.length > 0 ? { takenBack: out } : {}),
  };
}

function outcomeOf({ level, placement, grade, faults = [], note = "", becomes, at }: Judged): Outcome[] {
  if (grade === null) return [];
  const more = becomes === undefined ? {} : { becomes };
  return [{ level, placement, grade, faults: [...new Set(faults)], note, at, ...more }];
}
