import type { CommandAnswer, CommandCall } from "../studio/api/contract.ts";
import { addPhoto, type NewPhoto } from "../studio/commands/add-photo.ts";
import { doCommand } from "../studio/commands/do-command.ts";
import { redo, undo } from "../studio/history/undo.ts";
import type { StudioStore } from "../studio/records/store.ts";
import { Refusal } from "./answering/refusals.ts";
import type { ServerSetting } from "./server-setting.ts";
import { StudioNews } from "./studio-news.ts";

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

  /** Settings that were put say that she has begun, though nothing is kept yet. */
  async beginEmpty(): Promise<void> {
    await this.store.write(async ({ settings }) => settings.put(await settings.get()));
    this.news.replaced();
  }

  /** Not there yet. */
  async beginWithDemo(): Promise<void> {
    throw new Refusal(501, {
      code: "no-demo",
      path: "with",
      found: "demo",
      expected: "empty: the demo is still being made",
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
