import type { StudioNotice } from "../../studio/api/notices-contract.ts";

const NEVER_SWITCHES =
  "Wareboard watches and advises; it never switches a kiln. Your kiln's own manual, local codes and a licensed electrician come first.";

/** A notice as a letter: what it is about in one line, and the whole of it. */
export function letterOf({ kind, firingName, message, since, isDanger }: StudioNotice): {
  readonly subject: string;
  readonly text: string;
} {
  const subject = `${isDanger ? "Look at the kiln: " : ""}${kind}, ${firingName}`.replaceAll(/\s+/g, " ").slice(0, 120);
  return { subject, text: `${message}\n\nSince ${since} (UTC), firing: ${firingName}.\n\n${NEVER_SWITCHES}\n` };
}

/** A notice as other programs read it. */
export const noticeContent = (notice: StudioNotice): object => ({
  format: "notice/1",
  ...notice,
  note: NEVER_SWITCHES,
});
