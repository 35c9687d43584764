import type { WareFile } from "../../ware/ware.ts";
import type { WareRecord } from "../records/ware-record.ts";
import { given } from "./keeping.ts";
import type { WareChange } from "./ware-inputs.ts";

/**
 * A batch with a change made to it. Null takes a field out of `ware`. A drawn outline is stretched with the piece where
 * the change gives none, and a recorded glaze takes the place of one in words, as words do of a recorded one.
 */
export function changedWare(before: WareRecord, { ware: change = {}, ...fields }: WareChange): WareRecord {
  const ware = { ...before.ware, ...given(change) } as WareFile;
  for (const [name, value] of Object.entries(change)) if (value === null) delete ware[name as keyof WareFile];
  if (change.profile === undefined && ware.profile) ware.profile = stretched(ware.profile, before.ware, ware);
  const after: WareRecord = { ...before, ...given(fields), ware };
  if (typeof fields.glazeId === "string" && change.glaze === undefined) delete ware.glaze;
  else if (change.glaze && fields.glazeId === undefined) after.glazeId = null;
  return after;
}

/** The outline of the piece as it was, at the size it is now. */
function stretched(
  profile: readonly [number, number][],
  before: WareFile,
  { diameterMm, heightMm }: WareFile,
): [number, number][] {
  const [taller, wider] = [heightMm / before.heightMm, diameterMm / before.diameterMm];
  return profile.map(([height, radius]) => [height * taller, radius * wider]);
}
