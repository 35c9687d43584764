import type { FiringRecord } from "../../studio/records/firing-record.ts";
import type { Studio } from "../studio.ts";
import { FiringNotices } from "./firing-notices.ts";
import { FIRST_WISHES, NoticeSender } from "./notice-sender.ts";
import { QuietRules } from "./quiet-rules.ts";

/** What notices need of the server, besides the studio. */
export interface NoticeSetting {
  readonly say: (words: string) => void;
  /** The hour of the day in the studio, 0 to 23; by this machine's own clock where left out. */
  readonly hourOf?: (ms: number) => number;
}

/** The studio's notices: one set of quiet rules for all its kilns. */
export class Notices {
  readonly sender: NoticeSender;
  readonly #studio: Studio;
  readonly #rules: QuietRules;

  constructor(studio: Studio, { say, hourOf = (ms) => new Date(ms).getHours() }: NoticeSetting) {
    this.#studio = studio;
    this.#rules = new QuietRules(hourOf);
    this.sender = new NoticeSender({
      dataFolder: studio.dataFolder,
      wishes: async () => (await studio.store.read(({ settings }) => settings.get())).notices ?? FIRST_WISHES,
      toBrowsers: (notice) => studio.news.noticed(notice),
      say,
    });
  }

  /** Those of one firing, as far as they are written down with it. */
  ofFiring(firing: FiringRecord): FiringNotices {
    return new FiringNotices(this.#studio, firing, this.#rules, this.sender);
  }

  close(): Promise<void> {
    return this.sender.close();
  }
}
