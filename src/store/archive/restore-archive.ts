import type { StudioStore } from "../../studio/records/store.ts";
import { inParts } from "../in-parts.ts";
import type { StudioArchive } from "./archive-format.ts";
import { packStudio } from "./write-archive.ts";

/** What a restore needs to know of its surroundings. */
export interface RestoreCare {
  /** Puts the archive of what was there in a safe place. Called before anything is touched; not for an empty studio. */
  readonly saveFirst: (archive: Uint8Array) => Promise<void>;
  /** The moment, ISO 8601 in UTC. */
  readonly now: string;
}

/**
 * Puts an archive's studio in place of the one in the store: all of it or nothing. What was there is saved first; where
 * that fails, nothing is touched. With the demo's archive this is how the demo begins; with the archive of another
 * database it is the move from there.
 */
export const restoreArchive = (store: StudioStore, archive: StudioArchive, care: RestoreCare): Promise<void> =>
  store.write(async (records) => {
    if (!(await records.isEmpty())) await care.saveFirst(await packStudio(records, care.now));
    // An archive that says nothing of settings leaves hers.
    const settings = archive.settings ?? (await records.settings.get());
    await records.clear();
    await records.settings.put(settings);
    await records.kilns.add(...archive.kilns);
    await records.clayBodies.add(...archive.clayBodies);
    await records.glazes.add(...archive.glazes);
    for (const part of inParts(archive.ware, 1)) await records.ware.add(...part);
    for (const part of inParts(archive.loads, 1)) await records.loads.add(...part);
    for (const part of inParts(archive.firings, 1)) await records.firings.add(...part);
    for (const part of inParts(archive.notes, 1)) await records.notes.add(...part);
    for (const part of inParts(archive.programmes, 1)) await records.programmes.add(...part);
    for (const part of inParts(archive.calibrations, 1)) await records.calibrations.add(...part);
    for (const part of inParts(archive.upkeep, 1)) await records.upkeep.add(...part);
    for (const part of inParts(archive.loggers, 1)) await records.loggers.add(...part);
    for (const photo of archive.photos) await records.photos.add(photo, archive.pictures.get(photo.id) as Uint8Array);
    for (const { firingId, probe, readings } of archive.readings) await records.readings.add(firingId, probe, readings);
  });
