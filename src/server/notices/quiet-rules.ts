import type { StudioNotice } from "../../studio/api/notices-contract.ts";

// When a notice is sent, and when it is only written down. Common practice, no source: a phone that cries too often is
// switched off, and then it tells of nothing.

/** A fault that comes back so soon after it was over is the same one. */
export const SAME_FAULT_MS = 10 * 60_000;
/** Hours of the night, by the studio's own clock: only danger wakes anybody; the rest waits for the morning. */
const NIGHT = { from: 22, to: 7 };
/** How many an hour at most; of those, how many that are no danger. */
const MOST_AN_HOUR = { all: 8, plain: 4 };
const HOUR_MS = 60 * 60_000;

/** Faults by which a kiln may come to be hotter than it should be: its controller heats on, or trusts a wrong reading. */
const DANGER = new Set(["overshoot", "dead probe", "slipped probe"]);
export const isDanger = (kind: string): boolean => DANGER.has(kind);

/** A moment she asked to be told of, whatever the hour: a cone that falls at night falls at night. */
const AT_ANY_HOUR = new Set(["cone due"]);

/** Something that lasts from a moment, and may be over. */
export interface Lasting {
  readonly kind: string;
  readonly since: string;
  readonly until: string | null;
}

/** Makes one of faults of a kind that flicker. In order of their beginning. */
export function withoutFlicker<Fault extends Lasting>(faults: readonly Fault[]): Fault[] {
  const steady: Fault[] = [];
  for (const fault of faults.toSorted((a, b) => (a.since < b.since ? -1 : 1))) {
    const i = steady.findLastIndex(({ kind }) => kind === fault.kind);
    const last = steady[i];
    const goesOn =
      last !== undefined && (last.until === null || Date.parse(fault.since) - Date.parse(last.until) <= SAME_FAULT_MS);
    if (goesOn) steady[i] = { ...last, until: fault.until };
    else steady.push(fault);
  }
  return steady;
}

/** Whether an already known fault and another are one and the same. */
export function isSame(known: Lasting, other: Lasting): boolean {
  if (known.kind !== other.kind) return false;
  const [begins, others] = [Date.parse(known.since), Date.parse(other.since)];
  const ends = known.until === null ? Number.POSITIVE_INFINITY : Date.parse(known.until);
  return others >= begins - SAME_FAULT_MS && others <= ends + SAME_FAULT_MS;
}

/** Decides when each notice goes out. One that was given is never given again. Time comes in as milliseconds. */
export class QuietRules {
  /** The hour of the day in the studio, 0 to 23. */
  readonly #hourOf: (ms: number) => number;
  readonly #waiting = new Map<string, StudioNotice>();
  #sent: { readonly at: number; readonly isDanger: boolean }[] = [];

  constructor(hourOf: (ms: number) => number) {
    this.#hourOf = hourOf;
  }

  /** A notice that has begun. Gives what is to be sent now. */
  begun(notice: StudioNotice, now: number): StudioNotice[] {
    this.#waiting.set(notice.id, notice);
    return this.due(now);
  }

  /** It is over before anybody was told: then nobody needs to be. */
  ended(id: string): void {
    this.#waiting.delete(id);
  }

  /** Whatever waited and may be sent now, danger first. */
  due(now: number): StudioNotice[] {
    const due: StudioNotice[] = [];
    const waiting = [...this.#waiting.values()].sort((a, b) => Number(b.isDanger) - Number(a.isDanger));
    for (const notice of waiting) {
      if (!this.#may(notice, now)) continue;
      this.#waiting.delete(notice.id);
      this.#sent.push({ at: now, isDanger: notice.isDanger });
      due.push(notice);
    }
    return due;
  }

  #may({ kind, isDanger: danger }: StudioNotice, now: number): boolean {
    this.#sent = this.#sent.filter(({ at }) => now - at < HOUR_MS);
    if (this.#sent.length >= MOST_AN_HOUR.all) return false;
    if (danger) return true;
    if (this.#sent.filter((each) => !each.isDanger).length >= MOST_AN_HOUR.plain) return false;
    const hour = this.#hourOf(now);
    return AT_ANY_HOUR.has(kind) || (hour >= NIGHT.to && hour < NIGHT.from);
  }
}
