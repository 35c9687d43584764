import type { CommandAnswer } from "../../../studio/api/contract.ts";
import type { PhotoRecord } from "../../../studio/records/note-and-photo-records.ts";
import { showChanged } from "../../studio/cache.ts";
import { ask } from "../../studio/client.ts";
import { downscaled } from "./downscale.ts";

/**
 * Keeps a photo about something, scaled down first. A picture is too heavy for the line of waiting changes: without the
 * studio it is not taken.
 *
 * @throws StudioAway, StudioRefusal, or an Error in words where the picture cannot be read
 */
export async function addPhoto(
  aboutKind: NonNullable<PhotoRecord["aboutKind"]>,
  aboutId: string,
  file: Blob,
): Promise<void> {
  const picture = await downscaled(file);
  const query = new URLSearchParams({ aboutKind, aboutId, caption: "" });
  const answer = await ask<CommandAnswer>(`/photos?${query}`, {
    bytes: picture,
    // A phone's line may be slow; the usual patience is for questions without a picture.
    signal: AbortSignal.timeout(120_000),
  });
  showChanged(answer.changed);
}
