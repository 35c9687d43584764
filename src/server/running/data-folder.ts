import { randomBytes } from "node:crypto";
import {
  chmodSync,
  existsSync,
  linkSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { homedir } from "node:os";
import { isAbsolute, join } from "node:path";
import { BadInput } from "../../measures/bad-input.ts";

const KEY_BYTES = 32;
const DAY_MS = 24 * 60 * 60_000;

/**
 * Where a studio is kept unless she says otherwise: `wareboard-studio` where the system keeps programs' data
 * (`XDG_DATA_HOME`, freedesktop.org's Base Directory Specification), or else in her own folder, where she finds it.
 */
export function usualDataFolder(environment: NodeJS.ProcessEnv = process.env): string {
  const data = environment.XDG_DATA_HOME;
  return join(data !== undefined && isAbsolute(data) ? data : homedir(), "wareboard-studio");
}

/** The studio's database inside its folder. */
export const storeFile = (folder: string): string => join(folder, "studio.sqlite");
export const backupFolder = (folder: string): string => join(folder, "backups");
/** Uploads on their way in. What a stopped server left there is nobody's. */
export const arrivingFolder = (folder: string): string => join(folder, "arriving");

/**
 * Makes the folder where there is none, for her alone to read, and clears what a stopped server left half-way.
 *
 * @throws BadInput where it cannot be made or written
 */
export function prepareDataFolder(folder: string): void {
  try {
    if (!existsSync(folder)) {
      mkdirSync(folder, { recursive: true });
      chmodSync(folder, 0o700);
    }
    for (const inside of [backupFolder(folder), arrivingFolder(folder)]) {
      mkdirSync(inside, { recursive: true, mode: 0o700 });
    }
    clearForgotten(arrivingFolder(folder));
  } catch (error) {
    throw new BadInput({
      code: "no-data-folder",
      path: folder,
      found: `a place where no folder can be made or written (${(error as NodeJS.ErrnoException).code})`,
      expected: "a folder of her own; choose another with --data FOLDER",
    });
  }
}

/** Another server may be receiving this very moment; what has not grown for a day is nobody's. */
function clearForgotten(folder: string): void {
  for (const name of readdirSync(folder)) {
    const file = join(folder, name);
    const facts = statSync(file, { throwIfNoEntry: false });
    if (facts && facts.mtimeMs < Date.now() - DAY_MS) rmSync(file, { force: true });
  }
}

/** The server's own random key, made once and kept in the folder for her alone to read. */
export function serverKey(folder: string): Buffer {
  const file = join(folder, "server-key");
  if (!existsSync(file)) {
    const beside = `${file}.${process.pid}`;
    writeFileSync(beside, randomBytes(KEY_BYTES).toString("base64url"), { mode: 0o600 });
    try {
      // Of two servers that start at once, the second finds the first one's.
      linkSync(beside, file);
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== "EEXIST") throw error;
    } finally {
      rmSync(beside);
    }
  }
  const key = Buffer.from(readFileSync(file, "utf8").trim(), "base64url");
  if (key.length === KEY_BYTES) return key;
  throw new BadInput({
    code: "spoilt-key",
    path: file,
    found: `a key of ${key.length} bytes`,
    expected: `${KEY_BYTES} bytes; take the file out, and everybody gives the passphrase again`,
  });
}
