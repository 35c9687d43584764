import { formOutline } from "../../../ware/forms.ts";
import type { Seen } from "../drawing/piece-marks.ts";
import { type BatchDraft, hasSides } from "./batch-draft.ts";
import { TYPICAL_SIZE } from "./typical-size.ts";

/** What of a draft can be seen from the side; where a size is not typed, an ordinary one of its form. */
export function seenOf(draft: BatchDraft): Seen {
  const form = draft.form ?? "other";
  const typical = TYPICAL_SIZE[form];
  const size = {
    diameterMm: draft.acrossMm || typical.diameterMm,
    heightMm: draft.heightMm || typical.heightMm,
    widthMm: draft.shorterMm || typical.widthMm,
  };
  const outline = formOutline(form, size);
  return {
    form,
    // A box is seen along its longer side, not across its corners.
    diameterMm: hasSides(draft) ? Math.max(size.diameterMm, draft.shorterMm ?? 0) : size.diameterMm,
    heightMm: size.heightMm,
    handle: draft.handle === "by-form" ? outline.handle : draft.handle,
    spout: draft.spout === "by-form" ? outline.spout : draft.spout,
    profile:
      draft.profile === "by-form" || draft.profile === null
        ? null
        : [...draft.profile.map(([up, out]): [number, number] => [up, out])],
    cookie: draft.cookie,
  };
}
