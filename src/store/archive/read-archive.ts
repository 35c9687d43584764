import type { TObject } from "typebox";
import { shown } from "../../measures/bad-input.ts";
import { readJson } from "../../measures/read-json.ts";
import { readBySchema } from "../../measures/read-schema.ts";
import { KINDS } from "../../studio/records/all-kinds.ts";
import { checkMoment } from "../../studio/records/fields.ts";
import { checkPicture } from "../../studio/records/note-and-photo-records.ts";
import { checkRecord, KIND_NAMES, type RecordKind } from "../../studio/records/record-kind.ts";
import { idTaken, missingReference, recordPath } from "../../studio/records/refusals.ts";
import { readSettings } from "../../studio/records/studio-settings.ts";
import {
  ARCHIVE_FORMAT,
  type ArchiveCard,
  ArchiveCardSchema,
  CARD,
  MOST_ARCHIVE_BYTES,
  pictureFile,
  type StudioArchive,
} from "./archive-format.ts";
import { asText, refuse } from "./archive-refusals.ts";
import { readReadings } from "./read-readings.ts";
import { unzip } from "./unzip.ts";

/**
 * Reads an archive and checks all of it, so that nothing in it can stop a restore half-way: every record, every
 * reference, every picture, and that the zip holds what the card names and nothing else.
 *
 * @param mostBytes what it may weigh unpacked
 * @throws BadInput naming the first thing that will not do
 */
export async function readArchive(bytes: Uint8Array, mostBytes = MOST_ARCHIVE_BYTES): Promise<StudioArchive> {
  const files = await unzip(bytes, mostBytes);
  const card = readCard(takeOut(files, CARD));
  const ids = new Map(KIND_NAMES.map((name) => [name, checkRecords(KINDS[name], card[name] ?? [])] as const));
  for (const name of KIND_NAMES) checkReferences(KINDS[name], card[name] ?? [], ids);
  const pictures = readPictures(card, files);
  const readings = readReadings(card, ids.get("firings") as ReadonlySet<string>, (file) => takeOut(files, file));
  const [odd] = files.keys();
  if (odd !== undefined) refuse("unknown-entry", shown(odd), `only entries that ${CARD} names`);
  const { format: _, ...records } = card;
  const { programmes = [], calibrations = [], upkeep = [], loggers = [] } = card;
  return { ...records, programmes, calibrations, upkeep, loggers, pictures, readings };
}

function readCard(bytes: Uint8Array): ArchiveCard {
  const json = readJson(asText(bytes, CARD), CARD);
  const format = (json as { format?: unknown } | null)?.format;
  if (typeof format === "string" && format.startsWith("studio-archive/") && format !== ARCHIVE_FORMAT) {
    refuse("other-version", format, `${ARCHIVE_FORMAT}; use the Wareboard that made it, or a newer one`, "format");
  }
  const card = readBySchema(ArchiveCardSchema, json);
  checkMoment(card.madeAt, "madeAt");
  if (card.settings !== undefined) readSettings(card.settings);
  return card;
}

/** Each entry is taken out once: two cards naming one file, or a file nobody names, is a fault. */
function takeOut(files: Map<string, Uint8Array>, file: string): Uint8Array {
  const bytes = files.get(file);
  if (bytes === undefined) refuse("missing-entry", `no entry "${file}"`, "every entry the card names, each named once");
  files.delete(file);
  return bytes as Uint8Array;
}

function checkRecords(kind: RecordKind<TObject>, records: readonly unknown[]): ReadonlySet<string> {
  const ids = new Set<string>();
  for (const value of records) {
    const { id } = checkRecord(kind, value, recordPath(kind, (value as { id: unknown }).id)) as { id: string };
    if (ids.has(id)) throw idTaken(kind, id);
    ids.add(id);
  }
  return ids;
}

function checkReferences(
  kind: RecordKind,
  records: readonly object[],
  ids: ReadonlyMap<string, ReadonlySet<string>>,
): void {
  for (const [field, to] of Object.entries(kind.refersTo)) {
    for (const record of records as readonly Record<string, string | null>[]) {
      const id = record[field];
      if (typeof id !== "string" || ids.get(to)?.has(id)) continue;
      throw missingReference(`${recordPath(kind, record.id)}.${field}`, KINDS[to], id);
    }
  }
}

function readPictures(card: ArchiveCard, files: Map<string, Uint8Array>): Map<string, Uint8Array> {
  const pictures = new Map<string, Uint8Array>();
  const named = new Map(card.pictures.map(({ photoId, file }) => [photoId, file]));
  if (named.size !== card.pictures.length) refuse("id-taken", "a photo with two pictures", "one each", "pictures");
  for (const photo of card.photos) {
    const path = recordPath(KINDS.photos, photo.id);
    const file = named.get(photo.id);
    if (file !== pictureFile(photo)) refuse("wrong-entry", shown(file), `its picture at "${pictureFile(photo)}"`, path);
    const picture = takeOut(files, pictureFile(photo));
    checkPicture(photo, picture, path);
    pictures.set(photo.id, picture);
    named.delete(photo.id);
  }
  const [odd] = named.keys();
  if (odd !== undefined)
    refuse("missing-reference", `a picture of photo ${shown(odd)}`, "a photo of the card", "pictures");
  return pictures;
}
