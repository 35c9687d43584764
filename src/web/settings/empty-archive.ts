import { strToU8, zipSync } from "fflate";
import type { StudioSettings } from "../../studio/records/studio-settings.ts";

/**
 * An archive of a studio with nothing in it but its settings. Restored, it empties the studio by the one way that saves
 * first what is there.
 *
 * @param madeAt the moment to write into it, ISO 8601 in UTC
 */
export function emptyArchive(settings: StudioSettings, madeAt: string): Uint8Array<ArrayBuffer> {
  const nothing = { kilns: [], clayBodies: [], glazes: [], ware: [], loads: [], firings: [], notes: [], photos: [] };
  const card = { format: "studio-archive/1", madeAt, settings, ...nothing, pictures: [], readings: [] };
  return new Uint8Array(zipSync({ "studio.json": strToU8(JSON.stringify(card)) }));
}
