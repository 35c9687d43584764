import {
  closeSync,
  fsyncSync,
  mkdirSync,
  openSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  writeSync,
} from "node:fs";
import { join } from "node:path";
import { backupsToKeep } from "../studio/records/backups-to-keep.ts";
import type { StudioStore } from "../studio/records/store.ts";
import { MOST_ARCHIVE_BYTES } from "./archive/archive-format.ts";
import { readArchive } from "./archive/read-archive.ts";
import { restoreArchive } from "./archive/restore-archive.ts";
import { writeArchive } from "./archive/write-archive.ts";

/** A backup in its folder. */
export interface Backup {
  readonly file: string;
  /** When it was made, ISO 8601 in UTC. */
  readonly madeAt: string;
  /** True for what was saved because a restore was about to replace it; never thinned out. */
  readonly beforeRestore: boolean;
}

const NAME = /^studio-(\d{4}-\d\d-\d\d)T(\d\d)(\d\d)(\d\d)\.(\d{3})Z(-before-restore)?\.zip$/;

/** The backups in a folder, newest first. Other files there are none of ours and left alone. */
export function listBackups(folder: string): Backup[] {
  mkdirSync(folder, { recursive: true });
  const backups = readdirSync(folder).flatMap((name) => {
    const [, day, hour, minute, second, millisecond, mark] = NAME.exec(name) ?? [];
    if (day === undefined) return [];
    const madeAt = `${day}T${hour}:${minute}:${second}.${millisecond}Z`;
    return [{ file: join(folder, name), madeAt, beforeRestore: mark !== undefined }];
  });
  return backups.sort((a, b) => (a.madeAt < b.madeAt ? 1 : -1));
}

/**
 * Writes a backup of the whole studio and thins out the older ones by age.
 *
 * @param now the moment, ISO 8601 in UTC
 * @returns the file
 */
export async function backUp(store: StudioStore, folder: string, now: string): Promise<string> {
  const file = saveBackup(await writeArchive(store, now), folder, now, "");
  thinBackups(folder, now);
  return file;
}

/**
 * Puts a backup in place of what the store holds, after saving that in the same folder. Nothing is touched unless the
 * whole archive is sound.
 *
 * @param archive the archive's bytes
 * @returns the file of what was there before, or null where the studio was empty
 * @throws BadInput saying what is wrong with the archive
 */
export async function restoreBackup(
  store: StudioStore,
  archive: Uint8Array,
  folder: string,
  now: string,
): Promise<string | null> {
  const content = await readArchive(archive, MOST_ARCHIVE_BYTES);
  let saved: string | null = null;
  const saveFirst = async (bytes: Uint8Array) => {
    saved = saveBackup(bytes, folder, now, "-before-restore");
  };
  await restoreArchive(store, content, { saveFirst, now });
  return saved;
}

/** Takes out the backups that age has made needless; those from before a restore stay. */
export function thinBackups(folder: string, now: string): void {
  const plain = listBackups(folder).filter(({ beforeRestore }) => !beforeRestore);
  const kept = new Set(
    backupsToKeep(
      plain.map(({ madeAt }) => madeAt),
      now,
    ),
  );
  for (const { file, madeAt } of plain) if (!kept.has(madeAt)) rmSync(file);
}

/** The bytes of a backup, for `readArchive` or to hand out. */
export const readBackup = ({ file }: Backup): Uint8Array => new Uint8Array(readFileSync(file));

/** A backup has its name only once it is whole and on the disk: a power cut leaves a `.part` file, never half a backup. */
function saveBackup(bytes: Uint8Array, folder: string, now: string, mark: "" | "-before-restore"): string {
  mkdirSync(folder, { recursive: true });
  const file = join(folder, `studio-${now.replaceAll(":", "")}${mark}.zip`);
  const part = `${file}.part`;
  const open = openSync(part, "w", 0o600);
  try {
    for (let from = 0; from < bytes.length; ) from += writeSync(open, bytes, from);
    fsyncSync(open);
  } finally {
    closeSync(open);
  }
  renameSync(part, file);
  syncFolder(folder);
  return file;
}

/** Makes the new name itself last. Windows has no such thing, nor needs it. */
function syncFolder(folder: string): void {
  if (process.platform === "win32") return;
  const open = openSync(folder, "r");
  fsyncSync(open);
  closeSync(open);
}
