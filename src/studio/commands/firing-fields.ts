import type { FiringRecord } from "../records/firing-record.ts";

type MayBeLeftOut = "plannedStartAt" | "shutOffAt";
type Change = Partial<Omit<FiringRecord, MayBeLeftOut>> & {
  readonly [Field in MayBeLeftOut]?: FiringRecord[Field] | null | undefined;
};

/** A firing with some fields changed. What is undefined stays; null takes out a field that may be left out. */
export function withFields(
  firing: FiringRecord,
  change: { readonly [Field in keyof Change]: Change[Field] | undefined },
) {
  const after: Record<string, unknown> = { ...firing };
  for (const [name, value] of Object.entries(change)) {
    if (value === undefined) continue;
    if (value === null && (name === "plannedStartAt" || name === "shutOffAt")) delete after[name];
    else after[name] = value;
  }
  return after as FiringRecord;
}
