import { useState } from "react";
import { MEASURING_CAUTION } from "../../../firing/elements/element-condition.ts";
import { CAUTIONS_FIRST } from "../../../sheets/cautions.ts";
import type { KilnRecord } from "../../../studio/records/kiln-record.ts";
import type { UpkeepRecord, UpkeepWork } from "../../../studio/records/upkeep-record.ts";
import { MomentField } from "../../firings/start/MomentField.tsx";
import { undoLast } from "../../loads/undo-last.ts";
import { Button, CautionNote, Dialog, NumberField, Problem, TextField, tell } from "../../parts/index.ts";
import { newId, useCommand } from "../../studio/hooks.ts";
import { inputOf, lastOhms, type NoteDraft, newNote } from "./note-draft.ts";
import { OhmFields } from "./OhmFields.tsx";
import { entryWords, isElectrical, isOfShelves, WORK_WORDS } from "./work-words.ts";

interface NoteDialogProps {
  readonly kiln: KilnRecord;
  readonly what: UpkeepWork;
  readonly book: readonly UpkeepRecord[];
  readonly onClose: () => void;
}

/** Notes one thing that was done to the kiln: today unless she says otherwise. */
export default function NoteDialog({ kiln, what, book, onClose }: NoteDialogProps) {
  const command = useCommand();
  const [draft, setDraft] = useState<NoteDraft>(() => newNote(what, book, new Date().toISOString()));
  const [problem, setProblem] = useState<unknown>(null);
  const set = (change: Partial<NoteDraft>) => {
    setDraft({ ...draft, ...change });
    setProblem(null);
  };
  const keep = () => {
    const read = inputOf(draft);
    if ("missing" in read) return setProblem(read.missing);
    const id = newId();
    const input = { id, kilnId: kiln.id, ...read.input };
    const stamp = new Date().toISOString();
    command("note-upkeep", input, (cache) =>
      cache.put("upkeep", { ...(input as UpkeepRecord), createdAt: stamp, changedAt: stamp }),
    ).then(undefined, (error: unknown) => tell(error instanceof Error ? error.message : "It was not noted"));
    tell(`Noted: ${entryWords(input as UpkeepRecord)}`, () => void undoLast("kilns"));
    onClose();
  };
  return (
    <Dialog
      title={WORK_WORDS[what]}
      isOpen
      onClose={onClose}
      actions={
        <Button look="main" onPress={keep}>
          Note it
        </Button>
      }
    >
      {isElectrical(what) && (
        <CautionNote title="Cut off from the supply first">
          {what === "element resistance"
            ? MEASURING_CAUTION
            : `Isolator off, plug out, and nobody can switch it on again. Changing elements, relays and probes is a licensed electrician’s or the maker’s work wherever the manual or local code says so. ${CAUTIONS_FIRST}`}
        </CautionNote>
      )}
      {what === "element resistance" && (
        <OhmFields ohms={draft.ohms} last={lastOhms(book)} onChange={(ohms) => set({ ohms })} />
      )}
      {isOfShelves(what) && (
        <NumberField
          label="How many shelves"
          hasSteps
          min={1}
          max={1000}
          value={draft.count}
          onChange={(count) => set({ count })}
        />
      )}
      <MomentField label="When" value={draft.at} max={new Date().toISOString()} onChange={(at) => set({ at })} />
      <TextField
        label={what === "other" ? "What was done" : "Anything else"}
        isLong
        maxLength={2000}
        value={draft.note}
        onChange={(note) => set({ note })}
      />
      <Problem error={problem} />
    </Dialog>
  );
}
