import { existsSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { backup, DatabaseSync } from "node:sqlite";
import { BadInput } from "../../measures/bad-input.ts";
import { storeFile } from "../../server/running/data-folder.ts";

/** A folder for one rehearsal; nothing of it is left afterwards. */
export interface RehearsalFolder {
  readonly folder: string;
  /** True where her own studio was copied into it. */
  readonly isCopy: boolean;
  readonly remove: () => void;
}

/**
 * Makes a folder to rehearse in. Her own studio is only read: it may be open elsewhere at the same time.
 *
 * @param own the folder of her studio; null for the demo's
 * @throws BadInput where there is no studio in it
 */
export async function rehearsalFolder(own: string | null): Promise<RehearsalFolder> {
  if (own !== null && !existsSync(storeFile(own))) {
    const expected = "the folder that `wareboard serve` keeps a studio in; or no --data, for the demo's";
    throw new BadInput({ code: "no-studio", path: "--data", found: `no studio in ${own}`, expected });
  }
  const folder = mkdtempSync(join(tmpdir(), "wareboard-rehearsal-"));
  const remove = (): void => rmSync(folder, { recursive: true, force: true });
  if (own === null) return { folder, isCopy: false, remove };
  const from = new DatabaseSync(storeFile(own), { readOnly: true });
  try {
    await backup(from, storeFile(folder));
  } catch (error) {
    remove();
    throw error;
  } finally {
    from.close();
  }
  return { folder, isCopy: true, remove };
}
