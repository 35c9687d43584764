import type { FiringRecord } from "../../studio/records/firing-record.ts";
import type { Studio } from "../studio.ts";

const BELIEVED_MS = 10_000;
/** Older than this, a reading may be of a firing that has ended since. */
const LATE_MS = 60_000;

/** From when to when a kiln was at it; the end is null as long as it is. */
interface Course {
  readonly id: string;
  readonly startedAt: string;
  readonly endedAt: string | null;
}

/** Tells which firing of a kiln a reading belongs to: the one whose course holds its moment. */
export class FiringOfMoment {
  readonly #studio: Studio;
  readonly #ended: () => void;
  #underWay: { readonly all: Promise<ReadonlyMap<string, readonly Course[]>>; readonly since: number } | null = null;

  constructor(studio: Studio) {
    this.#studio = studio;
    this.#ended = studio.news.listen(({ entryId, changed }) => {
      if (entryId === "" || changed.firings !== undefined) this.#underWay = null;
    });
  }

  /**
   * The firings of a kiln that moments fall into.
   *
   * @param earliest of the moments that are to be placed; where it is a while ago, firings that are over count too
   */
  async of(kilnId: string, earliest: string): Promise<{ at: (moment: string) => string | null; isUnderWay: boolean }> {
    const underWay = (await this.#now()).get(kilnId) ?? [];
    const isLate = Date.parse(this.#studio.now()) - Date.parse(earliest) > LATE_MS;
    const known = isLate && !underWay.some((course) => holds(course, earliest));
    const courses = known ? await this.#ofKiln(kilnId) : underWay;
    return {
      at: (moment) => courses.find((course) => holds(course, moment))?.id ?? null,
      isUnderWay: underWay.length > 0,
    };
  }

  close(): void {
    this.#ended();
  }

  #now(): Promise<ReadonlyMap<string, readonly Course[]>> {
    const now = Date.parse(this.#studio.now());
    if (this.#underWay === null || now - this.#underWay.since > BELIEVED_MS) {
      const all = this.#read();
      const known = { all, since: now };
      this.#underWay = known;
      all.catch(() => {
        if (this.#underWay === known) this.#underWay = null;
      });
    }
    return this.#underWay.all;
  }

  async #read(): Promise<ReadonlyMap<string, readonly Course[]>> {
    const firings = await this.#studio.store.read(async (records) => [
      ...(await records.firings.list({ state: "firing" })),
      ...(await records.firings.list({ state: "cooling" })),
    ]);
    const byKiln = new Map<string, Course[]>();
    for (const firing of latestFirst(firings)) {
      byKiln.set(firing.kilnId, [...(byKiln.get(firing.kilnId) ?? []), ...courseOf(firing)]);
    }
    return byKiln;
  }

  async #ofKiln(kilnId: string): Promise<Course[]> {
    const firings = await this.#studio.store.read((records) => records.firings.list({ kilnId }));
    return latestFirst(firings).flatMap(courseOf);
  }
}

const holds = ({ startedAt, endedAt }: Course, moment: string): boolean =>
  startedAt <= moment && (endedAt === null || moment <= endedAt);

function courseOf({ id, state, startedAt, endedAt }: FiringRecord): Course[] {
  return state === "planned" || startedAt === null ? [] : [{ id, startedAt, endedAt }];
}

/** Of two that hold a moment, the later one counts: she forgot to end the one before. */
const latestFirst = (firings: readonly FiringRecord[]): FiringRecord[] =>
  firings.toSorted((a, b) => ((a.startedAt ?? "") < (b.startedAt ?? "") ? 1 : -1));
