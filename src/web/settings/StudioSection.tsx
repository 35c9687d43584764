import { useState } from "react";
import type { StudioSettings } from "../../studio/records/studio-settings.ts";
import { ChoiceField } from "../parts/ChoiceField.tsx";
import { TextField } from "../parts/TextField.tsx";
import { useSettings } from "../studio/hooks.ts";
import { Section } from "./Section.tsx";
import { useChangeSettings } from "./use-change-settings.ts";

const LENGTHS = [
  { id: "metric", label: "Millimetres" },
  { id: "inches", label: "Inches" },
] as const;
const TEMPERATURES = [
  { id: "C", label: "°C" },
  { id: "F", label: "°F" },
] as const;
const PAPERS = [
  { id: "a4", label: "A4" },
  { id: "letter", label: "US letter" },
] as const;

/** What holds for the whole studio. */
export function StudioSection() {
  const { lengthUnits, temperatureUnits, paper } = useSettings();
  const change = useChangeSettings();
  return (
    <Section title="The studio">
      <Words
        field="studioName"
        label="Name"
        hint="Stands on the load sheet. It may be empty."
        maxLength={120}
        becomes={(text) => text.trim()}
      />
      <ChoiceField
        label="Lengths"
        hint="How they are shown. You may type either."
        look="row"
        options={LENGTHS}
        value={lengthUnits}
        onChange={(value) => change({ lengthUnits: value })}
      />
      <ChoiceField
        label="Temperatures"
        look="row"
        options={TEMPERATURES}
        value={temperatureUnits}
        onChange={(value) => change({ temperatureUnits: value })}
      />
      <ChoiceField
        label="Paper"
        hint="What sheets are printed on."
        look="row"
        options={PAPERS}
        value={paper}
        onChange={(value) => change({ paper: value })}
      />
      <Words
        field="currency"
        label="Currency"
        hint="Three letters before a price, such as EUR. It may be empty."
        maxLength={3}
        becomes={(text) => text.trim().toUpperCase()}
      />
    </Section>
  );
}

interface WordsProps {
  readonly field: "studioName" | "currency";
  readonly label: string;
  readonly hint: string;
  readonly maxLength: number;
  readonly becomes: (typed: string) => string;
}

/** A field that is kept when she leaves it, not at each letter. */
function Words({ field, label, hint, maxLength, becomes }: WordsProps) {
  const settings = useSettings();
  const change = useChangeSettings();
  const [typed, setTyped] = useState<string | null>(null);
  const keep = () => {
    if (typed === null) return;
    const value = becomes(typed);
    setTyped(null);
    if (value !== settings[field]) change({ [field]: value } as Partial<StudioSettings>);
  };
  return (
    <TextField
      label={label}
      hint={hint}
      maxLength={maxLength}
      isShort={maxLength < 10}
      value={typed ?? settings[field]}
      onChange={setTyped}
      onBlur={keep}
    />
  );
}
