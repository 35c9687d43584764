import type { StudioStore } from "../studio/records/store.ts";
import type { ServerSetting } from "./server-setting.ts";
import { StudioNews } from "./studio-news.ts";

/** The studio as the routes see it. */
export class Studio {
  readonly store: StudioStore;
  readonly version: string;
  readonly dataFolder: string;
  readonly homeAddresses: () => readonly string[];
  readonly now: () => string;
  readonly newId: () => string;
  readonly news = new StudioNews();

  constructor({ store, version, dataFolder, homeAddresses, now, newId }: ServerSetting) {
    this.store = store;
    this.version = version;
    this.dataFolder = dataFolder;
    this.homeAddresses = homeAddresses;
    this.now = now;
    this.newId = newId;
  }
}
