import type { CommandAnswer, CommandCall } from "../studio/api/contract.ts";
import { addPhoto, type NewPhoto } from "../studio/commands/add-photo.ts";
import { doCommand } from "../studio/commands/do-command.ts";
import { beginEmpty, beginWithDemo } from "../studio/demo/begin.ts";
import { redo, undo } from "../studio/history/undo.ts";
import { KIND_NAMES, type KindName } from "../studio/records/record-kind.ts";
import type { StudioStore } from "../studio/records/store.ts";
import type { ServerSetting } from "./server-setting.ts";
import { type StudioIds, StudioNews } from "./studio-news.ts";

/** The studio as the routes see it: whatever changes it here is told to every open browser. */
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

  command(name: string, { key, input }: CommandCall): Promise<CommandAnswer> {
    return this.#told(doCommand(this.store, name, input, this.#context(key)));
  }

  addPhoto(photo: NewPhoto, picture: Uint8Array, key: string): Promise<CommandAnswer> {
    return this.#told(addPhoto(this.store, photo, picture, this.#context(key)));
  }

  undo(scope: string): Promise<CommandAnswer> {
    return this.#told(undo(this.store, scope));
  }

  redo(scope: string): Promise<CommandAnswer> {
    return this.#told(redo(this.store, scope));
  }

  /** Begins a new studio; refuses one that has begun. */
  async begin(how: "demo" | "empty"): Promise<void> {
    if (how === "demo") await beginWithDemo(this.store, this.now(), this.newId);
    else await beginEmpty(this.store);
    await this.replaced();
  }

  /** Tells every open browser to read everything again. `before`: the ids of what was there. */
  async replaced(...before: readonly StudioIds[]): Promise<void> {
    this.news.replaced(...before, await this.ids());
  }

  /** The ids of everything that is kept. */
  ids(): Promise<StudioIds> {
    return this.store.read(async (records) => {
      const ids = {} as { [Kind in KindName]: readonly string[] };
      for (const kind of KIND_NAMES) ids[kind] = (await records[kind].list()).map(({ id }) => id);
      return ids;
    });
  }

  #context(key: string) {
    return { key, now: this.now(), newId: this.newId };
  }

  async #told(doing: Promise<CommandAnswer>): Promise<CommandAnswer> {
    const answer = await doing;
    this.news.changed(answer);
    return answer;
  }
}
