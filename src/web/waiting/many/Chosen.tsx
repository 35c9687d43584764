import { lazy, Suspense, useMemo, useState } from "react";
import { useGlazes } from "../../studio/hooks.ts";
import { copiesOf } from "../batch/copies.ts";
import { eachOnReaching, NEXT_STAGE_WORDS } from "../batch/next-stage.ts";
import type { Selection } from "../list/selection.ts";
import type { WaitingBatch } from "../list/waiting-batch.ts";
import type { WareCommands } from "../use-ware-commands.ts";
import { batches as batchesWords, pieces } from "../words/ware-words.ts";
import { ChosenBar } from "./ChosenBar.tsx";

const ChangeManySheet = lazy(() => import("./ChangeManySheet.tsx"));

export interface ChosenProps {
  readonly batches: readonly WaitingBatch[];
  readonly shown: readonly WaitingBatch[];
  readonly selection: Selection;
  readonly commands: WareCommands;
  readonly onPlan: (ids: readonly string[]) => void;
  readonly onClear: () => void;
}

/** The batches chosen, and all that can be done with them at once. */
export function Chosen({ batches, shown, selection, commands, onPlan, onClear }: ChosenProps) {
  const glazes = useGlazes() ?? [];
  const [isChanging, setChanging] = useState(false);
  const records = useMemo(
    () => batches.filter(({ record }) => selection.ids.has(record.id)).map(({ record }) => record),
    [batches, selection],
  );
  const shownCount = useMemo(
    () => shown.filter(({ record }) => selection.ids.has(record.id)).length,
    [shown, selection],
  );
  const ids = records.map(({ id }) => id);
  const [first] = records;
  if (!first) return null;
  const what = records.length === 1 ? first.ware.name : batchesWords(records.length);
  return (
    <>
      <ChosenBar
        batchCount={records.length}
        pieceCount={records.reduce((sum, { ware }) => sum + ware.count, 0)}
        hiddenCount={records.length - shownCount}
        onPlan={() => onPlan(ids)}
        onChange={() => setChanging(true)}
        onReached={(stage) => {
          void commands.changeEach(eachOnReaching(stage, records, glazes), `${what}: ${NEXT_STAGE_WORDS[stage].done}`);
          onClear();
        }}
        onDuplicate={() => {
          const taken = new Set(batches.map(({ record }) => record.ware.name));
          void commands.add(copiesOf(records, taken), `Duplicated ${what}`);
        }}
        onRemove={() => {
          const count = records.reduce((sum, { ware }) => sum + ware.count, 0);
          void commands.remove(ids, `Removed ${what}: ${pieces(count)}`);
        }}
        onClear={onClear}
      />
      <Suspense fallback={null}>
        {isChanging && (
          <ChangeManySheet
            count={records.length}
            onClose={() => setChanging(false)}
            onChange={(change) => {
              void commands.change(ids, change, `Changed ${what}`);
              setChanging(false);
            }}
          />
        )}
      </Suspense>
    </>
  );
}
