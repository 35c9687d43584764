import { useState } from "react";
import { Button } from "../parts/Button.tsx";
import { Dialog } from "../parts/Dialog.tsx";
import { Problem } from "../parts/Problem.tsx";
import { tell } from "../parts/tell.ts";
import { queries } from "../studio/cache.ts";
import { useSettings } from "../studio/hooks.ts";
import { upload } from "../studio/upload.ts";
import styles from "./ArchiveSection.module.css";

/** From the studio she looked around in to one of her own. */
export function EmptyStudio() {
  const settings = useSettings();
  const [isAsked, setAsked] = useState(false);
  const [isBusy, setBusy] = useState(false);
  const [error, setError] = useState<unknown>(null);
  const empty = async () => {
    setBusy(true);
    setError(null);
    try {
      const { emptyArchive } = await import("./empty-archive.ts");
      const archive = new Blob([emptyArchive({ ...settings, studioName: "" }, new Date().toISOString())]);
      await upload("/archive", archive, "application/zip", () => {});
      await queries.invalidateQueries();
      tell("The studio is empty. What was in it is the newest backup.");
      setAsked(false);
    } catch (failed) {
      setError(failed);
    } finally {
      setBusy(false);
    }
  };
  return (
    <>
      <div className={styles.head}>
        <h3>Start anew</h3>
        <Button look="danger" onPress={() => setAsked(true)}>
          Empty the studio
        </Button>
      </div>
      <p className={styles.soft}>After looking around in the invented studio, say. What is in it is saved first.</p>
      <Dialog
        title="Empty the studio"
        isOpen={isAsked}
        staysOpen={isBusy}
        onClose={() => setAsked(false)}
        actions={
          <>
            <Button onPress={() => setAsked(false)} isDisabled={isBusy}>
              Leave it
            </Button>
            <Button look="danger" onPress={() => void empty()} isBusy={isBusy}>
              Empty it
            </Button>
          </>
        }
      >
        <p>
          Every kiln, pot, load, firing, note and photo is taken out, and the studio’s name; units and paper stay. All
          of it is saved first, as a backup you can restore here.
        </p>
        <Problem error={error} />
      </Dialog>
    </>
  );
}
