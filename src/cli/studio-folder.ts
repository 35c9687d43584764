import { existsSync } from "node:fs";
import { resolve } from "node:path";
import { BadInput } from "../measures/bad-input.ts";
import { storeFile, usualDataFolder } from "../server/running/data-folder.ts";
import { openSqliteStore } from "../store/sqlite-store.ts";
import type { StudioStore } from "../studio/records/store.ts";
import type { CommandCall } from "./command.ts";

export const DATA_OPTION_HELP =
  "the folder that holds the studio (wareboard-studio in your own folder, or in XDG_DATA_HOME); it may be open elsewhere";

/**
 * Opens the studio of `--data FOLDER`, does something with it, and lets go of it.
 *
 * @throws BadInput where there is no studio in that folder: none is made here
 */
export async function withStudio<Result>(
  call: CommandCall,
  use: (store: StudioStore) => Promise<Result>,
): Promise<Result> {
  const { data } = call.options;
  const folder = typeof data === "string" ? resolve(data) : usualDataFolder();
  if (!existsSync(storeFile(folder))) {
    const expected = "the folder that `wareboard serve` keeps a studio in, with --data FOLDER";
    throw new BadInput({ code: "no-studio", path: "--data", found: `no studio in ${folder}`, expected });
  }
  const store = await openSqliteStore(storeFile(folder));
  try {
    return await use(store);
  } finally {
    await store.close();
  }
}
