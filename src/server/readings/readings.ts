import type { Studio } from "../studio.ts";
import { Feed } from "./feed.ts";
import { FiringOfMoment } from "./firing-of-moment.ts";
import { Loggers } from "./loggers.ts";
import { ReadingKeeper } from "./reading-keeper.ts";

/** Everything by which temperatures come in. */
export class Readings {
  readonly keeper: ReadingKeeper;
  readonly loggers: Loggers;
  readonly feed: Feed;
  readonly #firings: FiringOfMoment;

  constructor(studio: Studio) {
    this.keeper = new ReadingKeeper(studio.store);
    this.loggers = new Loggers(studio);
    this.#firings = new FiringOfMoment(studio);
    this.feed = new Feed(this.keeper, this.#firings);
  }

  /** Keeps what still waits to be kept. */
  async close(): Promise<void> {
    this.loggers.close();
    this.#firings.close();
    await this.keeper.close();
  }
}
