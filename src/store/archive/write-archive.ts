import { type Zippable, zipSync } from "fflate";
import { BadInput } from "../../measures/bad-input.ts";
import { checkMoment } from "../../studio/records/fields.ts";
import type { ReadingSeries } from "../../studio/records/reading.ts";
import type { StudioRecords, StudioStore } from "../../studio/records/store.ts";
import {
  ARCHIVE_FORMAT,
  type ArchiveCard,
  CARD,
  MOST_ARCHIVE_BYTES,
  pictureFile,
  readingsFile,
} from "./archive-format.ts";

/**
 * The whole studio, as it was at one moment, in one zip file: backup, export and the way to another database.
 * The same studio and moment give the same bytes.
 *
 * @param madeAt the moment to write into it, ISO 8601 in UTC
 * @throws BadInput where a row is corrupt, or the studio is larger than an archive may be
 */
export const writeArchive = (store: StudioStore, madeAt: string): Promise<Uint8Array> =>
  store.read((records) => packStudio(records, madeAt));

/** The archive of what one transaction sees. */
export async function packStudio(records: StudioRecords, madeAt: string): Promise<Uint8Array> {
  checkMoment(madeAt, "madeAt");
  const files: Zippable = {};
  let bytes = 0;
  const put = (path: string, content: Uint8Array, level: 0 | 6): void => {
    bytes += content.length;
    if (bytes > MOST_ARCHIVE_BYTES) throw tooLarge(bytes);
    // A fixed date: the same studio gives the same file. Pictures are compressed already.
    files[path] = [content, { level, mtime: EARLIEST_ZIP_DATE }];
  };
  const [photos, firings] = [await records.photos.list(), await records.firings.list()];
  const pictures: ArchiveCard["pictures"] = [];
  for (const photo of photos) {
    const picture = await records.photos.picture(photo.id);
    if (picture === null) throw lostPicture(photo.id);
    put(pictureFile(photo), picture, 0);
    pictures.push({ photoId: photo.id, file: pictureFile(photo) });
  }
  const readings: ArchiveCard["readings"] = [];
  for (const { id } of firings) {
    for (const series of await records.readings.of(id)) {
      const file = readingsFile(readings.length);
      put(file, asBytes(readingsCsv(series)), 6);
      readings.push({ firingId: id, probe: series.probe, file });
    }
  }
  const card: ArchiveCard = {
    format: ARCHIVE_FORMAT,
    madeAt,
    settings: await records.settings.get(),
    kilns: await records.kilns.list(),
    clayBodies: await records.clayBodies.list(),
    glazes: await records.glazes.list(),
    ware: await records.ware.list(),
    loads: await records.loads.list(),
    firings,
    notes: await records.notes.list(),
    photos,
    programmes: await records.programmes.list(),
    calibrations: await records.calibrations.list(),
    upkeep: await records.upkeep.list(),
    loggers: await records.loggers.list(),
    pictures,
    readings,
  };
  put(CARD, asBytes(JSON.stringify(card, null, 1)), 6);
  return zipSync(files);
}

const EARLIEST_ZIP_DATE = "1980-01-02T00:00:00";
const asBytes = (text: string): Uint8Array => new TextEncoder().encode(text);

/** A temperature log as `wareboard heatwork` reads it. */
const readingsCsv = ({ readings }: ReadingSeries): string =>
  ["time,tempC", ...readings.map(({ at, tempC }) => `${at},${tempC}`), ""].join("\n");

const tooLarge = (bytes: number): BadInput =>
  new BadInput({
    code: "too-large",
    path: "archive",
    found: `${Math.round(bytes / 1e6)} MB and more to come`,
    expected: `at most ${Math.round(MOST_ARCHIVE_BYTES / 1e6)} MB; take some photos out or make them smaller`,
  });

const lostPicture = (id: string): BadInput =>
  new BadInput({ code: "corrupt-row", path: `photo "${id}"`, found: "no picture", expected: "the picture it is of" });
