import { KINDS } from "../studio/records/all-kinds.ts";
import { checkPicture } from "../studio/records/note-and-photo-records.ts";
import { recordPath } from "../studio/records/refusals.ts";
import type { PhotoSet } from "../studio/records/store.ts";
import type { Database } from "./database.ts";
import { recordRows } from "./record-rows.ts";

/** Photos: cards in one table, pictures in another, so that a list does not drag the pictures along. */
export function photoRows(database: Database): PhotoSet {
  const cards = recordRows(database, KINDS.photos);
  const picture = async (id: string): Promise<Uint8Array | null> => {
    const row = await database.selectFrom("pictures").select("bytes").where("photoId", "=", id).executeTakeFirst();
    return row ? new Uint8Array(row.bytes as Uint8Array) : null;
  };
  return {
    ...cards,
    picture,
    add: async (photo, bytes) => {
      checkPicture(photo, bytes, recordPath(KINDS.photos, photo.id));
      await cards.add(photo);
      await database.insertInto("pictures").values({ photoId: photo.id, bytes }).execute();
    },
    change: async (photo) => {
      const bytes = await picture(photo.id);
      if (bytes) checkPicture(photo, bytes, recordPath(KINDS.photos, photo.id));
      return cards.change(photo);
    },
  };
}
