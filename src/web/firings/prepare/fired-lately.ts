import type { Programme } from "../../../firing/programme/programme.ts";
import type { FiringRecord } from "../../../studio/records/firing-record.ts";
import { dayClockWords } from "../words/clock-words.ts";

/** A programme that was fired, and in which firing last. */
export interface FiredProgramme {
  readonly id: string;
  readonly programme: Programme;
  readonly note: string;
}

const MOST = 8;

/** Programmes fired in a kiln, the latest first; each but once, however often it was fired. */
export function firedLately(firings: readonly FiringRecord[], kilnId: string): FiredProgramme[] {
  const seen = new Set<string>();
  const over = firings
    .filter((firing) => firing.kilnId === kilnId && firing.startedAt !== null)
    .sort((a, b) => (b.startedAt ?? "").localeCompare(a.startedAt ?? ""));
  return over
    .flatMap(({ id, name, programme, startedAt }): FiredProgramme[] => {
      if (programme === null || seen.has(JSON.stringify(programme.segments))) return [];
      seen.add(JSON.stringify(programme.segments));
      return [{ id, programme, note: `${name}, ${dayClockWords(startedAt ?? "")}` }];
    })
    .slice(0, MOST);
}
