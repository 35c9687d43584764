import type { GlazeRecord } from "../../../studio/records/clay-and-glaze-records.ts";
import { Checkbox, LengthField, Sign } from "../../parts/index.ts";
import styles from "./BatchFields.module.css";
import { type BatchDraft, outlineOf } from "./batch-draft.ts";

// A cookie a little wider than the foot, as thick as a shelf's wash and a drip need. Common practice, no source.
const WIDER_MM = 20;
const THICKNESS_MM = 6;
const WITHOUT_SIZE_MM = 80;

export interface CookieFieldProps {
  readonly draft: BatchDraft;
  readonly change: (part: Pick<BatchDraft, "cookie">) => void;
  readonly glazes: readonly GlazeRecord[];
}

/** Whether each piece stands on a cookie, and what that measures. */
export function CookieField({ draft, change, glazes }: CookieFieldProps) {
  const { cookie } = draft;
  const runs = glazes.find(({ id }) => id === draft.glazeId)?.runs ?? false;
  return (
    <div className={styles.section}>
      <Checkbox
        isSelected={cookie !== null}
        onChange={(on) => change({ cookie: on ? cookieFor(draft) : null })}
        hint={runs ? undefined : "A clay disc under each piece, for a glaze that runs"}
      >
        Stands on a cookie
      </Checkbox>
      {runs && cookie === null && <Sign kind="mind">This glaze runs: a cookie under it saves the shelf.</Sign>}
      {cookie && (
        <div className={styles.two}>
          <LengthField
            label="Cookie across"
            valueMm={cookie.diameterMm}
            minMm={1}
            onChange={(mm) => mm !== null && change({ cookie: { ...cookie, diameterMm: mm } })}
          />
          <LengthField
            label="Cookie thick"
            valueMm={cookie.thicknessMm}
            minMm={1}
            onChange={(mm) => mm !== null && change({ cookie: { ...cookie, thicknessMm: mm } })}
          />
        </div>
      )}
    </div>
  );
}

function cookieFor(draft: BatchDraft): NonNullable<BatchDraft["cookie"]> {
  const outline = outlineOf(draft);
  const footMm = 2 * (outline?.profile?.[0]?.[1] ?? (outline ? outline.diameterMm / 2 : 0));
  const diameterMm = outline ? Math.round(Math.min(footMm + WIDER_MM, outline.diameterMm)) : WITHOUT_SIZE_MM;
  return { diameterMm, thicknessMm: THICKNESS_MM };
}
