import { useState } from "react";
import type { FiringRecord } from "../../studio/records/firing-record.ts";
import type { LoadRecord } from "../../studio/records/load-record.ts";
import styles from "../loads/sheet/Sheet.module.css";
import { sheetAddress } from "../loads/sheet/sheet-address.ts";
import { Button, Dialog, PrintIcon, Problem, Spinner } from "../parts/index.ts";
import { useSettings } from "../studio/hooks.ts";

interface FiringSheetDialogProps {
  readonly firing: FiringRecord;
  readonly load: LoadRecord;
  readonly onClose: () => void;
}

/** The load's sheet with this firing's pages: what to key in, what to expect, when to look. */
export default function FiringSheetDialog({ firing, load, onClose }: FiringSheetDialogProps) {
  const { paper, lengthUnits } = useSettings();
  const [isSeen, setSeen] = useState(false);
  const [error, setError] = useState<unknown>(null);
  const address = (kind: "pdf" | "svg") =>
    `${sheetAddress(load, { paper, units: lengthUnits, kind })}&firing=${encodeURIComponent(firing.id)}`;
  return (
    <Dialog
      title="The sheet, with its firing"
      isOpen
      isWide
      onClose={onClose}
      actions={
        <Button look="main" icon={<PrintIcon />} onPress={() => window.open(address("pdf"), "_blank", "noopener")}>
          Open to print
        </Button>
      }
    >
      <div className={styles.sheet}>
        <Problem error={error} />
        {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be within reach of the keys. */}
        <section className={styles.pages} aria-label="The pages, as they will be printed" tabIndex={0}>
          {!isSeen && <Spinner />}
          <img
            src={address("svg")}
            alt={`The sheet of ${load.name} with the firing ${firing.name}: the kiln at a glance, each level, the loading order, the programme, what to expect, cautions. The printed PDF can be read aloud.`}
            onLoad={() => setSeen(true)}
            onError={() => {
              setSeen(true);
              setError("The pages could not be shown. The studio may be away; try again in a moment.");
            }}
          />
        </section>
      </div>
    </Dialog>
  );
}
