import { BadInput } from "../../measures/bad-input.ts";
import type { CommandAnswer } from "../api/contract.ts";
import { type CallContext, doRecorded } from "../history/do-recorded.ts";
import { type PhotoRecord, pictureType } from "../records/note-and-photo-records.ts";
import type { StudioStore } from "../records/store.ts";
import { begun } from "./keeping.ts";
import { photoInWords } from "./note-and-photo-commands.ts";

/** A photo that is to be kept: what its picture cannot say. */
export type NewPhoto = Pick<PhotoRecord, "aboutKind" | "aboutId" | "caption" | "takenAt"> & { readonly id?: string };

/**
 * Keeps a photo, undoable as any command is.
 *
 * @throws BadInput where the bytes are no picture of a known kind, or too many
 */
export async function addPhoto(
  store: StudioStore,
  photo: NewPhoto,
  picture: Uint8Array,
  context: CallContext,
): Promise<CommandAnswer> {
  const mediaType = pictureType(picture);
  if (mediaType === null) {
    const expected = "a JPEG, PNG or WebP picture";
    throw new BadInput({ code: "wrong-picture", path: "picture", found: "bytes that are no such picture", expected });
  }
  const { id, ...card } = photo;
  return doRecorded(
    store,
    {
      command: "add-photo",
      scope: "photos",
      run: async (records) => {
        await records.photos.add({ ...card, mediaType, byteLength: picture.length, ...begun(id, context) }, picture);
        return `Added ${photoInWords(photo.caption)}`;
      },
    },
    context,
  );
}
