import { type Static, Type } from "typebox";
import { BadInput } from "../../measures/bad-input.ts";
import { OneOf } from "../../measures/schema.ts";
import { Id, Moment, orNull, stamps, Words } from "./fields.ts";
import type { RecordKind } from "./record-kind.ts";

/** What a note or photo can be about. */
const SUBJECTS = ["kilns", "clayBodies", "glazes", "ware", "loads", "firings"] as const;

// Nothing holds these to a record that is still there: what she wrote about a pot outlives the pot.
const about = {
  aboutKind: orNull(OneOf(SUBJECTS, "The kind of record it is about.")),
  aboutId: orNull(Id("The record it is about; it may be gone since.")),
};

/** Something she wrote down. */
export const NoteRecordSchema = Type.Object(
  { id: Id("The note."), ...about, text: Type.String({ minLength: 1, maxLength: 20000 }), ...stamps },
  { additionalProperties: false },
);
export type NoteRecord = Static<typeof NoteRecordSchema>;

/** The pictures that can be kept: kinds every browser shows and none of them runs. */
export const PHOTO_TYPES = ["image/jpeg", "image/png", "image/webp"] as const;
export type PhotoType = (typeof PHOTO_TYPES)[number];

/** One photo may weigh this much: a phone's own at full size. */
export const MOST_PHOTO_BYTES = 20 * 1024 * 1024;

/** A photo's card. The picture itself is kept beside it. */
export const PhotoRecordSchema = Type.Object(
  {
    id: Id("The photo."),
    ...about,
    mediaType: OneOf(PHOTO_TYPES, "What kind of picture it is."),
    byteLength: Type.Integer({ minimum: 1, maximum: MOST_PHOTO_BYTES, description: "How long the picture is." }),
    caption: Words("What it shows."),
    takenAt: orNull(Moment("When it was taken.")),
    ...stamps,
  },
  { additionalProperties: false },
);
export type PhotoRecord = Static<typeof PhotoRecordSchema>;

const kept = { refersTo: {}, versioned: false } as const;

export const NOTES: RecordKind<typeof NoteRecordSchema> = {
  name: "notes",
  one: "note",
  schema: NoteRecordSchema,
  ...kept,
  check: checkAbout,
};

export const PHOTOS: RecordKind<typeof PhotoRecordSchema> = {
  name: "photos",
  one: "photo",
  schema: PhotoRecordSchema,
  ...kept,
  check: checkAbout,
};

function checkAbout({ aboutKind, aboutId }: { aboutKind: string | null; aboutId: string | null }): void {
  if ((aboutKind === null) === (aboutId === null)) return;
  const found = aboutId === null ? "a kind and no record" : "a record of no kind";
  throw new BadInput({ code: "half-said", path: "aboutId", found, expected: "aboutKind and aboutId both, or neither" });
}

/**
 * Checks that a picture is what its card says.
 *
 * @throws BadInput where the length differs, or the bytes begin as another kind of file
 */
export function checkPicture(photo: PhotoRecord, bytes: Uint8Array, path: string): void {
  if (bytes.length !== photo.byteLength) {
    const expected = `the ${bytes.length} bytes of the picture`;
    throw new BadInput({ code: "wrong-length", path: `${path}.byteLength`, found: `${photo.byteLength}`, expected });
  }
  const found = pictureType(bytes);
  if (found === photo.mediaType) return;
  throw new BadInput({
    code: "wrong-picture",
    path: `${path}.mediaType`,
    found: found === null ? "bytes that are no picture of a known kind" : `a picture of type ${found}`,
    expected: photo.mediaType,
  });
}

/** What kind of picture the bytes begin as. Signatures: JPEG ITU-T T.81 B.1, PNG (W3C) 5.2, WebP RFC 9649 2.4. */
export function pictureType(bytes: Uint8Array): PhotoType | null {
  const begins = (marks: readonly number[], at = 0): boolean => marks.every((mark, i) => bytes[at + i] === mark);
  if (begins([0xff, 0xd8, 0xff])) return "image/jpeg";
  if (begins([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a])) return "image/png";
  if (begins([0x52, 0x49, 0x46, 0x46]) && begins([0x57, 0x45, 0x42, 0x50], 8)) return "image/webp";
  return null;
}
