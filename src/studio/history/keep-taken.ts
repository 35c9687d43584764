import type { StudioRecords } from "../records/store.ts";
import type { Recording } from "./recording.ts";

/** Keeps with an entry what was taken out and is no record: pictures of photos, temperatures of firings. */
export async function keepTaken(records: StudioRecords, entryId: string, taken: Recording): Promise<void> {
  for (const [photoId, picture] of taken.pictures) await records.history.keepPicture(entryId, photoId, picture);
  for (const series of taken.readings) await records.history.keepReadings(entryId, series);
}
