import { basename } from "node:path";
import { type Static, Type } from "typebox";
import { KIND_NAMES, type KindName } from "../../studio/records/record-kind.ts";
import type { StudioRecords } from "../../studio/records/store.ts";
import type { Studio } from "../studio.ts";

export const RestoredShape = Type.Object(
  {
    saved: Type.Union([Type.String(), Type.Null()], {
      description: "The backup that holds what was there before; null where the studio was empty.",
    }),
  },
  { additionalProperties: false },
);

/** Restores, and tells every open browser to read everything again. */
export async function restored(
  { store, news }: Studio,
  restore: () => Promise<string | null>,
): Promise<Static<typeof RestoredShape>> {
  const before = await store.read(idsOf);
  const saved = await restore();
  news.replaced(before, await store.read(idsOf));
  return { saved: saved === null ? null : basename(saved) };
}

async function idsOf(records: StudioRecords): Promise<Record<KindName, string[]>> {
  const ids = {} as Record<KindName, string[]>;
  for (const kind of KIND_NAMES) ids[kind] = (await records[kind].list()).map(({ id }) => id);
  return ids;
}
