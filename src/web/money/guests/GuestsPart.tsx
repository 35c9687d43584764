import { useId, useMemo, useState } from "react";
import { flushSync } from "react-dom";
import { Link } from "wouter";
import { type GuestFees, guestFees, guestOf } from "../../../studio/firings/guest-fees.ts";
import type { FiringRecord } from "../../../studio/records/firing-record.ts";
import type { LoadRecord } from "../../../studio/records/load-record.ts";
import type { WareRecord } from "../../../studio/records/ware-record.ts";
import { saveFile } from "../../firings/save-file.ts";
import { Button, SaveIcon } from "../../parts/index.ts";
import { useSettings } from "../../studio/hooks.ts";
import { fileName } from "../file-name.ts";
import styles from "../Money.module.css";
import { feesCsv } from "../money-csv.ts";
import { FeeSheet } from "./FeeSheet.tsx";

interface GuestsPartProps {
  readonly firing: FiringRecord;
  readonly load: LoadRecord | null;
  readonly ware: readonly WareRecord[];
  readonly currency: string;
  /** While a fee sheet is printed nothing else is. */
  readonly onPrinting: (isPrinting: boolean) => void;
  readonly onAskFee: () => void;
}

/** What guests owe for a firing: a sheet for each, to print or to keep as a table file. */
export function GuestsPart({ firing, load, ware, currency, onPrinting, onAskFee }: GuestsPartProps) {
  const id = useId();
  const { guestFee } = useSettings();
  const [printed, setPrinted] = useState<string | null>(null);
  const sheets = useMemo(() => {
    if (!guestFee || !load) return [];
    const guests = ware.flatMap((batch): [string, string][] => {
      const guest = guestOf(batch);
      return guest === null ? [] : [[batch.id, guest]];
    });
    return guestFees(load, guestFee, new Map(guests));
  }, [guestFee, load, ware]);
  // A batch taken out since can no longer say whose it was.
  const isSomeGone = load?.sources.some(({ wareId }) => !ware.some(({ id: batchId }) => batchId === wareId)) ?? false;
  const print = ({ guest }: GuestFees) => {
    flushSync(() => {
      setPrinted(guest);
      onPrinting(true);
    });
    // A phone's browser goes on while it prints, and tells when it has.
    const done = () => {
      setPrinted(null);
      onPrinting(false);
    };
    addEventListener("afterprint", done, { once: true });
    globalThis.print();
  };
  return (
    <section className={styles.part} aria-labelledby={id}>
      <div className={styles.head} data-print="no">
        <h2 id={id}>Guests’ ware in {firing.name}</h2>
        {sheets.length > 0 && (
          <Button
            icon={<SaveIcon />}
            onPress={() => saveFile(fileName(firing, "fees"), "text/csv", feesCsv(sheets, firing.name, currency))}
          >
            As a table file
          </Button>
        )}
      </div>
      {!guestFee ? (
        <>
          <p>
            Set what guests pay, by the litre of space and for each firing: their sheets are reckoned from the load.
          </p>
          <div>
            <Button onPress={onAskFee}>Set the fees</Button>
          </div>
        </>
      ) : sheets.length === 0 ? (
        <p>
          None of this firing’s ware is a guest’s. Ware is theirs where the batch’s note begins with “guest:” and a
          name, as in “guest: Tamsin”. <Link href="/">To the ware</Link>
        </p>
      ) : (
        sheets.map((sheet) => (
          <FeeSheet
            key={sheet.guest}
            sheet={sheet}
            firing={firing}
            fee={guestFee}
            currency={currency}
            isLeftOut={printed !== null && printed !== sheet.guest}
            onPrint={() => print(sheet)}
          />
        ))
      )}
      {guestFee && isSomeGone && (
        <p className={styles.soft} data-print="no">
          Some of what stood in it is of batches that are kept no more: whose they were is not known.
        </p>
      )}
    </section>
  );
}
