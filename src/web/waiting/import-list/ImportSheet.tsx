import { type ChangeEvent, useRef, useState } from "react";
import type { WareImport } from "../../../studio/records/ware-csv/preview-ware-import.ts";
import type { WareStage } from "../../../studio/records/ware-record.ts";
import { Button, ChoiceField, Dialog, OpenFileIcon, Problem, tell, wordsOf } from "../../parts/index.ts";
import { ask } from "../../studio/client.ts";
import { useCommand, useUndo } from "../../studio/hooks.ts";
import { STAGE_CHOICES } from "../batch/firing-choices.ts";
import { ImportPreview } from "./ImportPreview.tsx";
import styles from "./ImportSheet.module.css";
import { importCounts, importPress, importSummary } from "./import-words.ts";

export interface ImportSheetProps {
  readonly onClose: () => void;
}

interface Chosen {
  readonly csv: string;
  /** What new ware is where the list does not say. */
  readonly stage: WareStage;
  readonly preview: WareImport;
}

/** Takes a ware list in from a spreadsheet: first says row by row what will happen, then does it. */
export default function ImportSheet({ onClose }: ImportSheetProps) {
  const command = useCommand();
  const { undo } = useUndo("ware");
  const input = useRef<HTMLInputElement>(null);
  const [chosen, setChosen] = useState<Chosen | null>(null);
  const [isBusy, setBusy] = useState(false);
  const [problem, setProblem] = useState<unknown>(null);

  const busy = async (work: () => Promise<void>) => {
    setBusy(true);
    setProblem(null);
    try {
      await work();
    } catch (error) {
      setProblem(error);
    }
    setBusy(false);
  };
  const read = (event: ChangeEvent<HTMLInputElement>) => {
    const file = event.target.files?.[0];
    event.target.value = "";
    if (!file) return;
    setChosen(null);
    void busy(async () => look(await file.text(), "greenware"));
  };
  const look = async (csv: string, stage: WareStage) => {
    const preview = await ask<WareImport>("/ware-csv-preview", { body: { csv, stage } });
    setChosen({ csv, stage, preview });
  };
  const take = ({ csv, stage, preview }: Chosen) =>
    busy(async () => {
      await command("import-ware", { csv, stage });
      tell(`From the list: ${importSummary(importCounts(preview))}`, () =>
        undo().catch((error: unknown) => tell(wordsOf(error))),
      );
      onClose();
    });

  const counts = chosen && importCounts(chosen.preview);
  const does = counts ? counts.new + counts.changed : 0;
  return (
    <Dialog
      title="Take in a list"
      isOpen
      isWide
      onClose={onClose}
      actions={
        chosen &&
        counts && (
          <>
            <Button onPress={() => input.current?.click()}>Another file</Button>
            <Button look="main" isBusy={isBusy} isDisabled={does === 0} onPress={() => void take(chosen)}>
              {does === 0 ? "Nothing to take in" : importPress(counts)}
            </Button>
          </>
        )
      }
    >
      <input
        ref={input}
        type="file"
        accept=".csv,text/csv,text/plain"
        hidden
        onChange={read}
        aria-label="Ware list"
        data-testid="ware-list-file"
      />
      <Problem error={problem} />
      {chosen ? (
        <>
          <ImportPreview preview={chosen.preview} />
          <ChoiceField
            label="New ware whose stage the list does not say"
            look="row"
            options={STAGE_CHOICES}
            value={chosen.stage}
            onChange={(stage) => void busy(() => look(chosen.csv, stage))}
          />
        </>
      ) : (
        <div className={styles.begin}>
          <p>
            A list saved as CSV from any spreadsheet: a row of headings, then a batch a row. It needs the columns{" "}
            <code>name</code>, <code>count</code>, <code>diameterMm</code> and <code>heightMm</code>; lengths may carry
            their unit, as in <code>3 1/2 in</code>.
          </p>
          <p>
            To change batches that are here, export the list first and keep its <code>id</code> column. Nothing happens
            before you have seen what will.
          </p>
          <Button look="main" icon={<OpenFileIcon />} isBusy={isBusy} onPress={() => input.current?.click()}>
            Choose a file
          </Button>
        </div>
      )}
    </Dialog>
  );
}
