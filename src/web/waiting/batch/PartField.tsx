import type { Protrusion } from "../../../ware/ware.ts";
import { ChoiceField, LengthField, NumberField } from "../../parts/index.ts";
import styles from "./BatchFields.module.css";
import { type BatchDraft, outlineOf } from "./batch-draft.ts";

const WORDS = {
  handle: { title: "Handle", own: "Measured", none: "None" },
  spout: { title: "Spout", own: "Measured", none: "None" },
} as const;

const FIRST = {
  handle: { reachMm: 30, widthMm: 18, angleDeg: 0 },
  spout: { reachMm: 40, widthMm: 24, angleDeg: 180 },
} as const satisfies Record<string, Protrusion>;

export interface PartFieldProps {
  readonly part: "handle" | "spout";
  readonly draft: BatchDraft;
  readonly change: (part: Partial<Pick<BatchDraft, "handle" | "spout">>) => void;
}

/** A handle or spout: as the form has it, measured by her, or none. */
export function PartField({ part, draft, change }: PartFieldProps) {
  const chosen = draft[part];
  const byForm = outlineOf(draft)?.[part] ?? null;
  const words = WORDS[part];
  const handleDeg = draft.handle === "by-form" || draft.handle === null ? 0 : draft.handle.angleDeg;
  const set = (value: BatchDraft["handle"]): void => change({ [part]: value });
  return (
    <div className={styles.section}>
      <ChoiceField
        label={words.title}
        look="row"
        options={[
          { id: "by-form", label: "As the form has it" },
          { id: "own", label: words.own },
          { id: "none", label: words.none },
        ]}
        value={chosen === "by-form" ? "by-form" : chosen === null ? "none" : "own"}
        onChange={(how) => set(how === "by-form" ? how : how === "none" ? null : (byForm ?? FIRST[part]))}
      />
      {chosen !== "by-form" && chosen !== null && (
        <div className={styles.two}>
          <LengthField
            label={`${words.title} stands out`}
            hint="Beyond the rim"
            valueMm={chosen.reachMm}
            minMm={1}
            onChange={(mm) => mm !== null && set({ ...chosen, reachMm: mm })}
          />
          <LengthField
            label={`${words.title} wide`}
            hint="Seen from above"
            valueMm={chosen.widthMm}
            minMm={1}
            onChange={(mm) => mm !== null && set({ ...chosen, widthMm: mm })}
          />
          {part === "spout" && draft.handle !== null && (
            <NumberField
              label="Turned from the handle"
              hint="Degrees; 180 is straight across"
              value={Math.round(chosen.angleDeg - handleDeg)}
              min={-360}
              max={360}
              onChange={(turn) => turn !== null && set({ ...chosen, angleDeg: handleDeg + turn })}
            />
          )}
        </div>
      )}
    </div>
  );
}
