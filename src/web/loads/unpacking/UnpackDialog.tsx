import { useMemo, useState } from "react";
import { BECOMES, type Becomes } from "../../../studio/records/becomes.ts";
import type { LoadRecord } from "../../../studio/records/load-record.ts";
import type { WareRecord } from "../../../studio/records/ware-record.ts";
import { Button, ChoiceField, Dialog, Problem, tell } from "../../parts/index.ts";
import { useCommand } from "../../studio/hooks.ts";
import { undoLast } from "../undo-last.ts";
import { BECAME_WORDS, toldBatches, unpackedBatches } from "./became.ts";
import styles from "./Unpack.module.css";

interface UnpackDialogProps {
  readonly load: LoadRecord;
  readonly ware: readonly WareRecord[];
  readonly onClose: () => void;
}

const OPTIONS = BECOMES.map((id) => ({ id, label: BECAME_WORDS[id] }));

/** Asks what the pieces became, batch by batch; the likely answer stands there already. */
export default function UnpackDialog({ load, ware, onClose }: UnpackDialogProps) {
  const out = useMemo(() => unpackedBatches(load, ware), [load, ware]);
  const [answers, setAnswers] = useState<Readonly<Record<string, Becomes>>>({});
  const [isBusy, setBusy] = useState(false);
  const [error, setError] = useState<unknown>(null);
  const command = useCommand();

  const unpack = async () => {
    setBusy(true);
    setError(null);
    try {
      const batches = toldBatches(out, answers);
      await command("unpack-load", { id: load.id, version: load.version, batches }, (cache) =>
        cache.patch("loads", load.id, (before) => ({ ...before, state: "unpacked" })),
      );
    } catch (problem) {
      setError(problem);
      setBusy(false);
      return;
    }
    tell(`${load.name} is unpacked`, () => void undoLast(`load:${load.id}`));
    onClose();
  };

  return (
    <Dialog
      title={`Unpack ${load.name}`}
      isOpen
      onClose={onClose}
      actions={
        <Button look="main" onPress={() => void unpack()} isBusy={isBusy}>
          It is unpacked
        </Button>
      }
    >
      <div className={styles.form}>
        <p>
          {out.length === 0
            ? "Nothing of what stood in it still waits, so there is nothing to ask."
            : "What did they become? What is finished waits no more."}
        </p>
        <ul className={styles.rows}>
          {out.map(({ batch, count, likely }) => (
            <li key={batch.id} className={styles.row}>
              <span>
                {count} × {batch.ware.name}
              </span>
              <ChoiceField
                label={`What ${count} × ${batch.ware.name} became`}
                isLabelHidden
                options={OPTIONS}
                value={answers[batch.id] ?? likely}
                onChange={(became) => setAnswers({ ...answers, [batch.id]: became })}
              />
            </li>
          ))}
        </ul>
        <Problem error={error} />
      </div>
    </Dialog>
  );
}
