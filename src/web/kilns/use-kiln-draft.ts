import { useCallback, useEffect, useRef, useState } from "react";
import type { BadInput } from "../../measures/bad-input.ts";
import type { KilnRecord } from "../../studio/records/kiln-record.ts";
import { StudioRefusal, useCommand } from "../studio/hooks.ts";
import type { Fault } from "./field-problem.ts";
import { changedParts, draftFault, type KilnDraft } from "./kiln-draft.ts";

/** After this long without a key, what stands there is taken as meant. */
const SETTLED_MS = 900;

export interface KilnEditing {
  /** As it is drawn: every keystroke and drag at once. */
  readonly draft: KilnDraft;
  /** What keeps it from being saved, at its field. */
  readonly fault: Fault | null;
  readonly change: (change: (draft: KilnDraft) => KilnDraft) => void;
  /** Saves now what waits: she left the field. */
  readonly settle: () => void;
  /** True while something typed is not saved yet. */
  readonly isOpen: boolean;
}

/**
 * One kiln being edited. Changes are drawn at once and saved as one undoable command when she pauses or leaves the
 * field; what would be no kiln is not saved, and says why.
 */
export function useKilnDraft(record: KilnRecord): KilnEditing {
  const command = useCommand();
  const [draft, setDraft] = useState<KilnDraft>(record);
  const [refused, setRefused] = useState<Fault | null>(null);
  const latest = useRef<KilnDraft>(record);
  const kept = useRef<KilnDraft>(record);
  const timer = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);

  // Changed from elsewhere: an undo, another device. What she is typing this moment stays hers.
  useEffect(() => {
    const touched = changedParts(kept.current, latest.current);
    kept.current = record;
    const next = touched && timer.current !== undefined ? { ...partsOf(record), ...touched } : partsOf(record);
    latest.current = next;
    setDraft(next);
  }, [record]);

  const settle = useCallback(() => {
    clearTimeout(timer.current);
    timer.current = undefined;
    const parts = changedParts(kept.current, latest.current);
    if (parts === null || draftFault(latest.current)) return;
    kept.current = latest.current;
    command("change-kiln", { id: record.id, ...parts }, (cache) =>
      cache.patch("kilns", record.id, (kiln) => ({ ...kiln, ...parts })),
    ).catch((error: unknown) => {
      if (error instanceof StudioRefusal) setRefused(error);
      else throw error;
    });
  }, [command, record.id]);

  const change = useCallback(
    (make: (draft: KilnDraft) => KilnDraft) => {
      latest.current = make(latest.current);
      setDraft(latest.current);
      setRefused(null);
      clearTimeout(timer.current);
      timer.current = setTimeout(settle, SETTLED_MS);
    },
    [settle],
  );

  // Going elsewhere leaves nothing typed behind.
  useEffect(() => settle, [settle]);

  const fault: BadInput | Fault | null = draftFault(draft) ?? refused;
  return { draft, fault, change, settle, isOpen: changedParts(record, draft) !== null };
}

const partsOf = ({ kiln, furniture, rules }: KilnRecord): KilnDraft => ({ kiln, furniture, rules });
