import { type Static, Type } from "typebox";
import { KINDS, type RecordOf } from "../../studio/records/all-kinds.ts";
import { Id, Moment } from "../../studio/records/fields.ts";
import type { PhotoRecord, PhotoType } from "../../studio/records/note-and-photo-records.ts";
import type { ReadingSeries } from "../../studio/records/reading.ts";
import type { KindName } from "../../studio/records/record-kind.ts";
import { type StudioSettings, StudioSettingsSchema } from "../../studio/records/studio-settings.ts";

export const ARCHIVE_FORMAT = "studio-archive/1";

/** The card of an archive's contents; every other entry of the zip is named in it. */
export const CARD = "studio.json";

/** An archive unpacked may weigh this much: several hundred photos and years of firings. */
export const MOST_ARCHIVE_BYTES = 1024 * 1024 * 1024;

const Path = (description: string) => Type.String({ minLength: 1, maxLength: 200, description });
const listOf = <Kind extends KindName>(kind: Kind) => Type.Array(KINDS[kind].schema as (typeof KINDS)[Kind]["schema"]);

/** `studio.json`: every record as it is, and where in the zip the pictures and readings are. */
export const ArchiveCardSchema = Type.Object(
  {
    format: Type.Literal(ARCHIVE_FORMAT),
    madeAt: Moment("When the archive was made."),
    // Archives made before there were settings have none. The history is in none: an archive is what the studio is, not
    // how it came to be.
    settings: Type.Optional(StudioSettingsSchema),
    kilns: listOf("kilns"),
    clayBodies: listOf("clayBodies"),
    glazes: listOf("glazes"),
    ware: listOf("ware"),
    loads: listOf("loads"),
    firings: listOf("firings"),
    notes: listOf("notes"),
    photos: listOf("photos"),
    // Archives made before there were any have none of these.
    programmes: Type.Optional(listOf("programmes")),
    calibrations: Type.Optional(listOf("calibrations")),
    upkeep: Type.Optional(listOf("upkeep")),
    loggers: Type.Optional(listOf("loggers")),
    pictures: Type.Array(
      Type.Object({ photoId: Id("Whose picture."), file: Path("Its entry.") }, { additionalProperties: false }),
    ),
    readings: Type.Array(
      Type.Object(
        {
          firingId: Id("The firing."),
          probe: Type.String({ minLength: 1, maxLength: 120, description: "The probe." }),
          file: Path("Its entry: CSV with the columns time and tempC."),
        },
        { additionalProperties: false },
      ),
    ),
  },
  { additionalProperties: false, title: "Studio archive", description: "studio.json inside a studio's archive." },
);
export type ArchiveCard = Static<typeof ArchiveCardSchema>;

/** A whole studio, checked, in memory. */
export type StudioArchive = { readonly [Kind in KindName]: readonly RecordOf[Kind][] } & {
  readonly madeAt: string;
  readonly settings?: StudioSettings;
  readonly pictures: ReadonlyMap<string, Uint8Array>;
  readonly readings: readonly ReadingSeries[];
};

const ENDINGS: Readonly<Record<PhotoType, string>> = { "image/jpeg": "jpg", "image/png": "png", "image/webp": "webp" };

/** Where a photo's picture stands in the zip. Ids hold no dots or slashes, so that the path leads nowhere else. */
export const pictureFile = ({ id, mediaType }: PhotoRecord): string => `photos/${id}.${ENDINGS[mediaType]}`;

/** Where the n-th series of readings stands in the zip. */
export const readingsFile = (n: number): string => `readings/${String(n + 1).padStart(4, "0")}.csv`;
