import { useMemo, useRef, useState } from "react";
import { Button, Dialog } from "../../parts/index.ts";
import { useClayBodies, useGlazes, useSettings, useWare } from "../../studio/hooks.ts";
import { keepOnDevice, keptOnDevice } from "../kept-on-device.ts";
import { useWareCommands } from "../use-ware-commands.ts";
import { useToday } from "../words/use-today.ts";
import { pieces } from "../words/ware-words.ts";
import { BatchFields } from "./BatchFields.tsx";
import { type BatchDraft, batchOf } from "./batch-draft.ts";
import { nextDraft, rememberedOf } from "./remembered.ts";

const KEPT_UNDER = "last-batch";

/** A batch begun and put aside: the sheet was closed. It is there when the sheet is opened again. */
let putAside: BatchDraft | null = null;

export interface NewBatchSheetProps {
  readonly onClose: () => void;
}

/** Writes a batch down in seconds: a form, its size, how many. */
export default function NewBatchSheet({ onClose }: NewBatchSheetProps) {
  const { lengthUnits } = useSettings();
  const commands = useWareCommands();
  const ware = useWare();
  const taken = useMemo(() => new Set(ware?.map((batch) => batch.ware.name)), [ware]);
  const begin = useBeginning();
  const [draft, setDraft] = useState<BatchDraft>(() => putAside ?? begin());
  const [isAsked, setAsked] = useState(false);
  const [added, setAdded] = useState(0);
  const body = useRef<HTMLDivElement>(null);

  const close = () => {
    putAside = isBegun(draft) ? draft : null;
    onClose();
  };
  const focusFirst = () => setTimeout(() => body.current?.querySelector<HTMLInputElement>("input[inputmode]")?.focus());
  const add = (another: boolean) => {
    const batch = batchOf(draft, lengthUnits, taken);
    if (!batch) {
      setAsked(true);
      return;
    }
    keepOnDevice(KEPT_UNDER, JSON.stringify(rememberedOf(draft)));
    void commands.add([batch], `Added ${batch.ware.name}: ${pieces(batch.ware.count)}`);
    putAside = null;
    if (!another) return onClose();
    setDraft(begin());
    setAsked(false);
    setAdded(added + 1);
    focusFirst();
  };

  return (
    <Dialog
      title={added === 0 ? "New batch" : `New batch (${added} added)`}
      isOpen
      isWide
      onClose={close}
      actions={
        <>
          <Button onPress={() => add(true)}>Add and another</Button>
          <Button look="main" onPress={() => add(false)}>
            Add
          </Button>
        </>
      }
    >
      <div ref={body}>
        <BatchFields
          // Anew for each batch, so that no field keeps what was typed in it for the last.
          key={added}
          draft={draft}
          change={(part) => setDraft((before) => ({ ...before, ...part }))}
          taken={taken}
          isAsked={isAsked}
          onDone={() => add(false)}
        />
      </div>
    </Dialog>
  );
}

/** The draft a new batch begins with. */
function useBeginning(): () => BatchDraft {
  const clayBodies = useClayBodies();
  const glazes = useGlazes();
  const today = useToday();
  return () =>
    nextDraft(keptOnDevice(KEPT_UNDER), {
      clayBodyIds: new Set(clayBodies?.map(({ id }) => id)),
      glazeIds: new Set(glazes?.map(({ id }) => id)),
      today,
    });
}

const isBegun = ({ acrossMm, heightMm, count, name }: BatchDraft): boolean =>
  [acrossMm, heightMm, count, name].some((each) => each !== null);
