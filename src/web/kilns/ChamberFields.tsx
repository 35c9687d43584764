import type { Chamber } from "../../kiln/chamber.ts";
import { ChoiceField, LengthField, NumberField } from "../parts/index.ts";
import styles from "./Fields.module.css";
import { reshapedChamber } from "./from-measures.ts";

const SHAPES = [
  { id: "polygon", label: "Many-sided" },
  { id: "round", label: "Round" },
  { id: "rectangle", label: "Square or long" },
] as const;

interface ChamberFieldsProps {
  readonly chamber: Chamber;
  readonly onChange: (chamber: Chamber) => void;
  /** What is wrong with the field of this name, in words. */
  readonly problemAt: (field: string) => string | undefined;
}

/** The inside of the kiln, in numbers. */
export function ChamberFields({ chamber, onChange, problemAt }: ChamberFieldsProps) {
  const length = (field: string, label: string, valueMm: number, hint?: string) => (
    <LengthField
      label={label}
      hint={hint}
      valueMm={valueMm}
      problem={problemAt(field)}
      onChange={(mm) => mm !== null && onChange({ ...chamber, [field]: mm } as Chamber)}
    />
  );
  return (
    <div className={styles.stack}>
      <ChoiceField
        label="Shape"
        look="row"
        options={SHAPES}
        value={chamber.shape}
        onChange={(shape) => onChange(reshapedChamber(chamber, shape))}
      />
      <div className={styles.row}>
        {chamber.shape === "polygon" && (
          <>
            <NumberField
              label="Flat walls"
              value={chamber.sides}
              min={3}
              max={24}
              hasSteps
              problem={problemAt("sides")}
              onChange={(sides) => sides !== null && onChange({ ...chamber, sides })}
            />
            {length("acrossFlatsMm", "Across, flat to flat", chamber.acrossFlatsMm)}
          </>
        )}
        {chamber.shape === "round" && length("diameterMm", "Across", chamber.diameterMm)}
        {chamber.shape === "rectangle" && (
          <>
            {length("widthMm", "Across, left to right", chamber.widthMm)}
            {length("lengthMm", "Front to back", chamber.lengthMm)}
          </>
        )}
        {length("depthMm", "Depth, floor to lid", chamber.depthMm)}
      </div>
    </div>
  );
}
