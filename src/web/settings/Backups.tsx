import { useQuery } from "@tanstack/react-query";
import { useState } from "react";
import { Button } from "../parts/Button.tsx";
import { Dialog } from "../parts/Dialog.tsx";
import { Problem } from "../parts/Problem.tsx";
import { Spinner } from "../parts/Spinner.tsx";
import { tell } from "../parts/tell.ts";
import { queries } from "../studio/cache.ts";
import { ask } from "../studio/client.ts";
import styles from "./ArchiveSection.module.css";
import { dayAndTime, fileSize } from "./when.ts";

/** A backup, as the studio lists it. */
interface Backup {
  readonly name: string;
  readonly madeAt: string;
  readonly beforeRestore: boolean;
  readonly byteLength: number;
}

const FEW = 5;

/** The backups on the machine Wareboard runs on, and the way back to one. */
export function Backups() {
  const { data: backups, error } = useQuery({
    queryKey: ["backups"],
    queryFn: () => ask<Backup[]>("/backups"),
    staleTime: 0,
  });
  const [isBusy, setBusy] = useState(false);
  const [problem, setProblem] = useState<unknown>(null);
  const [all, setAll] = useState(false);
  const [chosen, setChosen] = useState<Backup | null>(null);
  const make = async () => {
    setBusy(true);
    setProblem(null);
    try {
      await ask("/backups", { method: "POST" });
      await queries.invalidateQueries({ queryKey: ["backups"] });
    } catch (failed) {
      setProblem(failed);
    } finally {
      setBusy(false);
    }
  };
  return (
    <>
      <div className={styles.head}>
        <h3>Backups on this machine</h3>
        <Button onPress={() => void make()} isBusy={isBusy}>
          Make one now
        </Button>
      </div>
      <p className={styles.soft}>
        Wareboard makes one a day while it runs, and thins out the old ones: all of the last two days stay, then one a
        day, one a week, one a month.
      </p>
      <Problem error={problem ?? error} />
      {backups === undefined && !error && <Spinner words="Looking for backups" />}
      {backups?.length === 0 && <p>None yet.</p>}
      {backups && backups.length > 0 && (
        <ul className={styles.list}>
          {(all ? backups : backups.slice(0, FEW)).map((backup) => (
            <li key={backup.name}>
              <span>
                {dayAndTime(backup.madeAt)}
                <small>
                  {fileSize(backup.byteLength)}
                  {backup.beforeRestore ? ", saved before a restore" : ""}
                </small>
              </span>
              <Button
                look="quiet"
                label={`Restore the backup of ${dayAndTime(backup.madeAt)}`}
                onPress={() => setChosen(backup)}
              >
                Restore
              </Button>
            </li>
          ))}
        </ul>
      )}
      {backups && backups.length > FEW && !all && (
        <Button look="quiet" onPress={() => setAll(true)}>
          {`Show all ${backups.length}`}
        </Button>
      )}
      {chosen && <RestoreBackup backup={chosen} onClose={() => setChosen(null)} />}
    </>
  );
}

function RestoreBackup({ backup, onClose }: { readonly backup: Backup; readonly onClose: () => void }) {
  const [isBusy, setBusy] = useState(false);
  const [error, setError] = useState<unknown>(null);
  const restore = async () => {
    setBusy(true);
    setError(null);
    try {
      await ask(`/backups/${encodeURIComponent(backup.name)}/restore`, { method: "POST" });
      await queries.invalidateQueries();
      tell(`The studio is as it was ${dayAndTime(backup.madeAt)}.`);
      onClose();
    } catch (failed) {
      setError(failed);
      setBusy(false);
    }
  };
  return (
    <Dialog
      title="Go back to this backup"
      isOpen
      onClose={onClose}
      staysOpen={isBusy}
      actions={
        <>
          <Button onPress={onClose} isDisabled={isBusy}>
            Leave it
          </Button>
          <Button look="main" onPress={() => void restore()} isBusy={isBusy}>
            Restore
          </Button>
        </>
      }
    >
      <p>
        The studio becomes what it was <strong>{dayAndTime(backup.madeAt)}</strong>. What is here now is saved first, as
        a backup you can restore in turn.
      </p>
      <Problem error={error} />
    </Dialog>
  );
}
