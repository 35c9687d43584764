import type { Fault } from "../../firing/watching/fault.ts";
import type { WatchState } from "../../firing/watching/watch-firing.ts";
import type { FiringWatch } from "../../studio/api/watch-contract.ts";
import type { WatchedFiring } from "../../studio/firings/watched-firing.ts";
import type { FiringRecord } from "../../studio/records/firing-record.ts";
import type { FiringNotices, Noticed } from "../notices/firing-notices.ts";
import type { ProbeReadings } from "../readings/reading-keeper.ts";
import type { Studio } from "../studio.ts";
import { FollowedReadings } from "./followed-readings.ts";
import { LOOK_KINDS, lookTimes, toldLookTimes } from "./look-times.ts";
import { shownWatch } from "./shown-watch.ts";
import type { WatchLine } from "./watch-line.ts";

/** How a firing stands is looked at again after so long of its own time. */
const LOOK_EVERY_MIN = 1;
/** Browsers are told no more often. */
const TOLD_EVERY_MS = 1000;
const MINUTE_MS = 60_000;

/** What a live firing is made of. */
export interface LiveSetting {
  readonly studio: Studio;
  readonly line: WatchLine;
  readonly firing: FiringRecord;
  /** Null where it has no programme: then only its readings are shown. */
  readonly watched: WatchedFiring | null;
  /** The probe the kiln is steered by. */
  readonly probe: string | null;
  readonly notices: FiringNotices;
  readonly pace: number;
  readonly complain: (error: Error) => void;
}

type Listener = (watch: FiringWatch) => void;

/** One firing under way, watched: by every reading that comes, and by the clock where none does. */
export class LiveFiring {
  readonly #setting: LiveSetting;
  readonly #startedMs: number;
  #readings: FollowedReadings;
  readonly #listeners = new Map<Listener, () => void>();
  /** One thing after another: the readings kept before, then what comes. */
  #doing: Promise<void>;
  #firing: FiringRecord;
  #state: WatchState | null = null;
  #looks: readonly Noticed[];
  #arrivedMs: number;
  #lookedMin = Number.NEGATIVE_INFINITY;
  #isLooking = false;
  #telling: NodeJS.Timeout | null = null;
  #isOver = false;

  constructor(setting: LiveSetting) {
    this.#setting = setting;
    this.#firing = setting.firing;
    this.#startedMs = Date.parse(setting.firing.startedAt ?? "");
    this.#readings = new FollowedReadings(this.#startedMs, setting.probe);
    this.#looks = (setting.firing.notices ?? []).filter(({ kind }) => (LOOK_KINDS as readonly string[]).includes(kind));
    this.#arrivedMs = this.#nowMs();
    this.#doing = this.#begin().catch(setting.complain);
  }

  get firing(): FiringRecord {
    return this.#firing;
  }

  /** How it stands. */
  shown(): FiringWatch {
    const { studio, pace, watched, firing } = this.#setting;
    const frame = { now: studio.now(), pace, startedAt: firing.startedAt ?? "", latest: this.#readings.latest };
    return shownWatch(frame, this.#state, watched?.cone ?? null);
  }

  /**
   * Tells of everything new, at most once a second; how it stands at once.
   *
   * @param onOver called when it is under way no more
   * @returns what ends the listening
   */
  listen(listener: Listener, onOver: () => void): () => void {
    listener(this.shown());
    this.#listeners.set(listener, onOver);
    return () => {
      this.#listeners.delete(listener);
    };
  }

  /** New readings, on the disk already. */
  take(kept: ProbeReadings): void {
    const feed = () => (this.#readings.isOfAnother(kept.probe) ? this.#begin() : this.#feed(kept));
    this.#doing = this.#doing.then(feed).catch(this.#setting.complain);
  }

  /** It may be time to look, whether readings come or not. */
  tick(): void {
    if (this.#readings.latest !== null && this.#nowMin() - this.#lookedMin >= LOOK_EVERY_MIN) void this.#look();
  }

  /** The record changed. */
  follow(firing: FiringRecord): void {
    const before = this.#firing;
    this.#firing = firing;
    if (firing.shutOffAt !== undefined && firing.shutOffAt !== before.shutOffAt) this.#shutOff(firing.shutOffAt);
  }

  /** It is under way no more. What lasted is over now. */
  async end(at: string): Promise<void> {
    if (this.#isOver) return;
    this.#isOver = true;
    if (this.#telling !== null) clearTimeout(this.#telling);
    this.#setting.line.end(this.#firing.id);
    await this.#doing;
    const over = this.#noticed().map((each) => ({ ...each, until: each.until ?? at }));
    await this.#setting.notices.tell(over).catch(() => {});
    for (const [listener, onOver] of this.#listeners) {
      listener(this.shown());
      onOver();
    }
    this.#listeners.clear();
  }

  /** Lets go of it, as it is: the server stops. */
  leave(): void {
    this.#isOver = true;
    if (this.#telling !== null) clearTimeout(this.#telling);
  }

  /** Watches it from its beginning, by what is stored. */
  async #begin(): Promise<void> {
    const { studio, line, watched, probe } = this.#setting;
    const firing = this.#firing;
    this.#readings = new FollowedReadings(this.#startedMs, probe);
    if (watched !== null) line.begin(firing.id, watched);
    if (firing.shutOffAt !== undefined) this.#shutOff(firing.shutOffAt);
    const all = await studio.store.read((records) => records.readings.of(firing.id));
    const series = all.find((each) => each.probe === probe) ?? earliest(all);
    if (series !== undefined) this.#feed(series);
  }

  #shutOff(at: string): void {
    this.#setting.line.shutOff(this.#firing.id, (Date.parse(at) - this.#startedMs) / MINUTE_MS);
  }

  #feed(kept: Omit<ProbeReadings, "firingId">): void {
    if (this.#isOver) return;
    const before = this.#readings.latest;
    const fed = this.#readings.take(kept);
    if (this.#readings.latest !== before) {
      this.#arrivedMs = this.#nowMs();
      this.#tellSoon();
    }
    if (fed === null || this.#setting.watched === null) return;
    this.#setting.line.read(this.#firing.id, fed.minutes, fed.tempC);
    if (this.#latestMin() - this.#lookedMin >= LOOK_EVERY_MIN) void this.#look();
  }

  /** Looks how it stands; while one look is under way, none other is begun. */
  async #look(): Promise<void> {
    const { line, watched, notices, complain } = this.#setting;
    if (this.#isLooking || this.#isOver || watched === null) return;
    this.#isLooking = true;
    const nowMin = this.#nowMin();
    this.#lookedMin = Math.max(nowMin, this.#latestMin());
    try {
      const { state, failed } = await line.look(this.#firing.id, nowMin);
      if (failed !== null) throw new Error(`${this.#firing.name} cannot be watched: ${failed}`);
      if (state === null || this.#isOver) return;
      this.#state = state;
      // While its probe cannot be believed, nobody knows: what was told stands.
      if (state.outlook !== null) {
        this.#looks = toldLookTimes(this.#looks, lookTimes(state, nowMin), this.#setting.studio.now());
      }
      this.#tellSoon();
      await notices.tell(this.#noticed());
    } catch (error) {
      if (!this.#isOver) complain(error as Error);
    } finally {
      this.#isLooking = false;
    }
  }

  #noticed(): Noticed[] {
    const faults = (this.#state?.faults ?? []).map((fault) => this.#faultNoticed(fault));
    return [...faults, ...this.#looks.map(({ kind, since, until, message }) => ({ kind, since, until, message }))];
  }

  #faultNoticed({ kind, sinceMin, untilMin, found, message }: Fault): Noticed {
    const moment = (minute: number): string => new Date(Math.round(this.#startedMs + minute * MINUTE_MS)).toISOString();
    return {
      kind,
      since: moment(sinceMin),
      until: untilMin === null ? null : moment(untilMin),
      message: `${found.charAt(0).toUpperCase()}${found.slice(1)}. ${message}`.slice(0, 1000),
    };
  }

  #tellSoon(): void {
    if (this.#isOver) return;
    this.#telling ??= setTimeout(() => {
      this.#telling = null;
      const watch = this.shown();
      for (const listener of this.#listeners.keys()) listener(watch);
    }, TOLD_EVERY_MS).unref();
  }

  #nowMs(): number {
    return Date.parse(this.#setting.studio.now());
  }

  #latestMin(): number {
    const { latest } = this.#readings;
    return latest === null ? Number.NEGATIVE_INFINITY : (Date.parse(latest.at) - this.#startedMs) / MINUTE_MS;
  }

  /**
   * Minutes since the start, by the studio's clock; a logger whose clock is behind is not silent as long as its readings
   * come: no later than its last reading and the time since that came.
   */
  #nowMin(): number {
    const now = this.#nowMs();
    return Math.min((now - this.#startedMs) / MINUTE_MS, this.#latestMin() + (now - this.#arrivedMs) / MINUTE_MS);
  }
}

const earliest = <Series extends Pick<ProbeReadings, "readings">>(all: readonly Series[]): Series | undefined =>
  all.toSorted((a, b) => ((a.readings[0]?.at ?? "~") < (b.readings[0]?.at ?? "~") ? -1 : 1))[0];
