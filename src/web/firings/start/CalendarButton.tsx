import type { FiringRecord } from "../../../studio/records/firing-record.ts";

/** Until a calendar's entry can be made, nothing. */
export function CalendarButton(_: { readonly firing: FiringRecord }) {
  return null;
}
