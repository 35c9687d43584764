import { basename } from "node:path";
import { type Static, Type } from "typebox";
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
  studio: Studio,
  restore: () => Promise<string | null>,
): Promise<Static<typeof RestoredShape>> {
  const before = await studio.ids();
  const saved = await restore();
  await studio.replaced(before);
  return { saved: saved === null ? null : basename(saved) };
}
