import { useState } from "react";
import { formatConeRange } from "../../../firing/cones/cone-range.ts";
import type { GlazeRecord } from "../../../studio/records/clay-and-glaze-records.ts";
import { ChoiceField, TextField } from "../../parts/index.ts";
import type { BatchDraft } from "./batch-draft.ts";

const OWN_WORDS = " words";

export interface GlazeFieldProps {
  readonly draft: Pick<BatchDraft, "glazeId" | "glazeWords">;
  readonly change: (part: Pick<BatchDraft, "glazeId" | "glazeWords">) => void;
  readonly glazes: readonly GlazeRecord[];
}

/** A recorded glaze, or one in her own words. */
export function GlazeField({ draft, change, glazes }: GlazeFieldProps) {
  const [inWords, setInWords] = useState(draft.glazeWords !== "");
  return (
    <>
      <ChoiceField
        label="Glaze"
        options={[
          { id: "", label: "None yet" },
          ...glazes.map(({ id, name, cones }) => ({ id, label: cones ? `${name}, ${formatConeRange(cones)}` : name })),
          { id: OWN_WORDS, label: "Another, in words" },
        ]}
        value={draft.glazeId ?? (inWords || draft.glazeWords !== "" ? OWN_WORDS : "")}
        onChange={(id) => {
          setInWords(id === OWN_WORDS);
          change({ glazeId: id === "" || id === OWN_WORDS ? null : id, glazeWords: "" });
        }}
      />
      {draft.glazeId === null && (inWords || draft.glazeWords !== "") && (
        <TextField
          label="Glaze in words"
          value={draft.glazeWords}
          maxLength={120}
          onChange={(glazeWords) => change({ glazeId: null, glazeWords })}
        />
      )}
    </>
  );
}
