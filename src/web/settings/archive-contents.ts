import { strFromU8, unzipSync } from "fflate";
import { BadInput } from "../../measures/bad-input.ts";
import type { StudioSettings } from "../../studio/records/studio-settings.ts";

/** What an archive holds, as told before it is put in place of the studio. */
export interface ArchiveContents {
  readonly madeAt: string;
  readonly studioName: string;
  readonly counts: readonly { readonly words: string; readonly count: number }[];
}

const CARD = "studio.json";

/** How many of a kind, in words. */
const COUNTED: readonly (readonly [kind: string, one: string, many: string])[] = [
  ["kilns", "kiln", "kilns"],
  ["ware", "batch of ware", "batches of ware"],
  ["loads", "load", "loads"],
  ["firings", "firing", "firings"],
  ["clayBodies", "clay body", "clay bodies"],
  ["glazes", "glaze", "glazes"],
  ["notes", "note", "notes"],
  ["photos", "photo", "photos"],
];

/**
 * Looks into a studio's archive. The studio checks every record of it when it is restored; this only tells what is there.
 *
 * @throws BadInput where the file is no archive of a studio
 */
export function archiveContents(bytes: Uint8Array): ArchiveContents {
  const card = cardOf(bytes);
  if (typeof card.format !== "string" || !card.format.startsWith("studio-archive/"))
    throw notAnArchive(`a "${CARD}" of another kind`);
  const counts = COUNTED.flatMap(([kind, one, many]) => {
    const list = card[kind];
    const count = Array.isArray(list) ? list.length : 0;
    return count === 0 ? [] : [{ count, words: `${count} ${count === 1 ? one : many}` }];
  });
  const settings = card.settings as StudioSettings | undefined;
  return { madeAt: String(card.madeAt ?? ""), studioName: settings?.studioName ?? "", counts };
}

function cardOf(bytes: Uint8Array): Record<string, unknown> {
  let card: Uint8Array | undefined;
  try {
    card = unzipSync(bytes, { filter: ({ name }) => name === CARD })[CARD];
  } catch {
    throw notAnArchive("a file that is no zip");
  }
  if (!card) throw notAnArchive(`a zip without "${CARD}"`);
  try {
    return JSON.parse(strFromU8(card)) as Record<string, unknown>;
  } catch {
    throw notAnArchive(`a "${CARD}" that is no JSON`);
  }
}

const notAnArchive = (found: string): BadInput =>
  new BadInput({
    code: "not-an-archive",
    path: "",
    found,
    expected: "a studio’s archive, as Wareboard saves it (.zip)",
  });
