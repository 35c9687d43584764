import { useState } from "react";
import type { LoadRecord } from "../../../studio/records/load-record.ts";
import type { StudioSettings } from "../../../studio/records/studio-settings.ts";
import { Button, ChoiceField, Dialog, OnIcon, PrintIcon, Problem, Spinner } from "../../parts/index.ts";
import { useCommand, useSettings } from "../../studio/hooks.ts";
import styles from "./Sheet.module.css";
import { sheetAddress } from "./sheet-address.ts";

const PAPERS = [
  { id: "a4", label: "A4" },
  { id: "letter", label: "Letter" },
] as const;
const LENGTHS = [
  { id: "metric", label: "Metric" },
  { id: "inches", label: "Inches" },
] as const;

/** The sheet to carry to the kiln: seen first, then printed. What is chosen here is remembered for next time. */
export default function SheetDialog({ load, onClose }: { load: LoadRecord; onClose: () => void }) {
  const { paper, lengthUnits } = useSettings();
  const [chosen, setChosen] = useState<Partial<Pick<StudioSettings, "paper" | "lengthUnits">>>({});
  const [error, setError] = useState<unknown>(null);
  const [seen, setSeen] = useState("");
  const command = useCommand();
  const wish = { paper: chosen.paper ?? paper, units: chosen.lengthUnits ?? lengthUnits };
  const picture = sheetAddress(load, { ...wish, kind: "svg" });
  const print = sheetAddress(load, { ...wish, kind: "pdf" });

  const choose = (change: typeof chosen) => {
    setChosen({ ...chosen, ...change });
    setError(null);
    command("change-settings", change).catch(setError);
  };

  return (
    <Dialog
      title="The sheet to carry to the kiln"
      isOpen
      isWide
      onClose={onClose}
      actions={
        <>
          <Button look="plain" icon={<OnIcon />} href={`/loads/${load.id}/at-the-kiln`}>
            Tick it off here
          </Button>
          <Button look="main" icon={<PrintIcon />} onPress={() => window.open(print, "_blank", "noopener")}>
            Open to print
          </Button>
        </>
      }
    >
      <div className={styles.sheet}>
        <div className={styles.choices}>
          <ChoiceField
            label="Paper"
            look="row"
            options={PAPERS}
            value={wish.paper}
            onChange={(to) => choose({ paper: to })}
          />
          <ChoiceField
            label="Lengths, here and everywhere"
            look="row"
            options={LENGTHS}
            value={wish.units}
            onChange={(to) => choose({ lengthUnits: to })}
          />
        </div>
        <Problem error={error} />
        {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be within reach of the keys. */}
        <section className={styles.pages} aria-label="The pages, as they will be printed" tabIndex={0}>
          {seen !== picture && error === null && <Spinner />}
          <img
            key={picture}
            src={picture}
            alt={`The sheet of ${load.name}: the kiln at a glance, each level to scale, the loading order and cautions. The printed PDF can be read aloud.`}
            onLoad={() => setSeen(picture)}
            onError={() => {
              setSeen(picture);
              setError("The pages could not be shown. The studio may be away; try again in a moment.");
            }}
          />
        </section>
      </div>
    </Dialog>
  );
}
