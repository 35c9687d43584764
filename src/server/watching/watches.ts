import { newestCalibration } from "../../studio/firings/newest-calibration.ts";
import { watchedFiring } from "../../studio/firings/watched-firing.ts";
import { sameValue } from "../../studio/history/same-value.ts";
import type { FiringRecord } from "../../studio/records/firing-record.ts";
import type { Notices } from "../notices/notices.ts";
import type { ReadingKeeper } from "../readings/reading-keeper.ts";
import type { Studio } from "../studio.ts";
import { LiveFiring } from "./live-firing.ts";
import { WatchLine } from "./watch-line.ts";

const TICK_MS = 1000;
/** Another program may have started or ended a firing in the same store. */
const LOOK_AROUND_TICKS = 10;

/** What the watches need of the server, besides the studio. */
export interface WatchesSetting {
  readonly studio: Studio;
  readonly keeper: ReadingKeeper;
  readonly notices: Notices;
  /** How fast the studio's clock runs; 1, but for a rehearsal's. */
  readonly pace: number;
  readonly complain: (error: Error) => void;
}

/** Every firing under way, watched. After a restart each is watched again from its stored readings. */
export class Watches {
  readonly #setting: WatchesSetting;
  readonly #live = new Map<string, LiveFiring>();
  readonly #line: WatchLine;
  readonly #stops: (() => void)[];
  #refreshing: Promise<void> = Promise.resolve();
  #ticks = 0;
  #isClosed = false;

  constructor(setting: WatchesSetting) {
    const { studio, keeper, complain } = setting;
    this.#setting = setting;
    this.#line = new WatchLine((error) => {
      complain(error);
      this.#forgetAll();
    });
    const timer = setInterval(() => this.#tick(), TICK_MS);
    timer.unref();
    this.#stops = [
      () => clearInterval(timer),
      keeper.listen((kept) => this.#live.get(kept.firingId)?.take(kept)),
      studio.news.listen(({ entryId, changed }) => {
        if (entryId === "") this.#forgetAll();
        if (entryId === "" || changed.firings !== undefined) void this.refresh();
      }),
    ];
  }

  /** The watch of a firing, or null where it is not under way. */
  async get(id: string): Promise<LiveFiring | null> {
    if (!this.#live.has(id)) await this.refresh();
    return this.#live.get(id) ?? null;
  }

  /** Looks which firings are under way. Never throws. */
  refresh(): Promise<void> {
    this.#refreshing = this.#refreshing.then(() => this.#lookAround()).catch(this.#setting.complain);
    return this.#refreshing;
  }

  async close(): Promise<void> {
    this.#isClosed = true;
    for (const stop of this.#stops) stop();
    await this.#refreshing;
    this.#forgetAll();
    await this.#line.close();
  }

  #tick(): void {
    if (++this.#ticks % LOOK_AROUND_TICKS === 0) void this.refresh();
    for (const live of this.#live.values()) live.tick();
  }

  #forgetAll(): void {
    for (const live of this.#live.values()) live.leave();
    this.#live.clear();
  }

  async #lookAround(): Promise<void> {
    if (this.#isClosed) return;
    const { studio } = this.#setting;
    const underWay = await studio.store.read(async ({ firings }) => [
      ...(await firings.list({ state: "firing" })),
      ...(await firings.list({ state: "cooling" })),
    ]);
    const byId = new Map(underWay.map((firing) => [firing.id, firing]));
    for (const [id, live] of this.#live) {
      const firing = byId.get(id);
      if (firing !== undefined && isSameFiring(live.firing, firing)) live.follow(firing);
      else await this.#over(id, live);
    }
    for (const firing of underWay) {
      if (!this.#live.has(firing.id) && firing.startedAt !== null) this.#live.set(firing.id, await this.#begin(firing));
    }
  }

  async #over(id: string, live: LiveFiring): Promise<void> {
    const { studio } = this.#setting;
    this.#live.delete(id);
    const firing = await studio.store.read(({ firings }) => firings.get(id));
    if (firing === null || firing.endedAt === null) live.leave();
    else await live.end(firing.endedAt);
  }

  async #begin(firing: FiringRecord): Promise<LiveFiring> {
    const { studio, notices, pace, complain } = this.#setting;
    const { kiln, load, calibrations } = await studio.store.read(async (records) => ({
      kiln: await records.kilns.get(firing.kilnId),
      load: firing.loadId === null ? null : await records.loads.get(firing.loadId),
      calibrations: await records.calibrations.list({ kilnId: firing.kilnId }),
    }));
    const calibration = newestCalibration(calibrations, firing.kilnId);
    const watched = kiln && this.#asWatched({ firing, kiln, load, calibration });
    const probe = kiln?.kiln.probes?.[0]?.name ?? null;
    const [line, ofFiring] = [this.#line, notices.ofFiring(firing)];
    return new LiveFiring({ studio, line, firing, watched, probe, notices: ofFiring, pace, complain });
  }

  /** One that cannot be watched is shown by its readings alone, and does not keep the others from being watched. */
  #asWatched(records: Parameters<typeof watchedFiring>[0]): ReturnType<typeof watchedFiring> {
    try {
      return watchedFiring(records);
    } catch (error) {
      this.#setting.complain(error as Error);
      return null;
    }
  }
}

/** Whether a watch can go on: it is the same firing, by the same programme, from the same moment. */
const isSameFiring = (a: FiringRecord, b: FiringRecord): boolean =>
  a.startedAt === b.startedAt &&
  a.kilnId === b.kilnId &&
  a.loadId === b.loadId &&
  (a.shutOffAt === undefined || b.shutOffAt !== undefined) &&
  sameValue(a.programme, b.programme);
