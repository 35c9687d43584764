import { type ReactNode, useRef, useState } from "react";
import { Button } from "../parts/Button.tsx";
import { Dialog } from "../parts/Dialog.tsx";
import { Problem } from "../parts/Problem.tsx";
import { queries } from "../studio/cache.ts";
import { upload } from "../studio/upload.ts";
import type { ArchiveContents } from "./archive-contents.ts";
import styles from "./RestoreArchive.module.css";
import { dayAndTime } from "./when.ts";

export interface RestoreArchiveProps {
  /** Opens the choice of a file: what to press. */
  readonly children: (choose: () => void) => ReactNode;
  /** Told when the archive stands in place of the studio, and where what was there before is kept. */
  readonly onRestored: (saved: string | null) => void;
  /** True where nothing is there that would be replaced. */
  readonly isFirst?: boolean;
}

/** Puts an archive from a file in place of the studio, after telling what is in it. */
export function RestoreArchive({ children, onRestored, isFirst = false }: RestoreArchiveProps) {
  const input = useRef<HTMLInputElement>(null);
  const [file, setFile] = useState<File | null>(null);
  const [contents, setContents] = useState<ArchiveContents | null>(null);
  const [share, setShare] = useState<number | null>(null);
  const [error, setError] = useState<unknown>(null);

  const look = async (chosen: File | undefined) => {
    if (!chosen) return;
    setFile(chosen);
    setContents(null);
    setError(null);
    try {
      const { archiveContents } = await import("./archive-contents.ts");
      setContents(archiveContents(new Uint8Array(await chosen.arrayBuffer())));
    } catch (problem) {
      setError(problem);
    }
  };
  const close = () => {
    setFile(null);
    if (input.current) input.current.value = "";
  };
  const restore = async () => {
    if (!file) return;
    setShare(0);
    setError(null);
    try {
      const { saved } = await upload<{ saved: string | null }>("/archive", file, "application/zip", setShare);
      await queries.invalidateQueries();
      close();
      onRestored(saved);
    } catch (problem) {
      setError(problem);
    } finally {
      setShare(null);
    }
  };

  return (
    <>
      {children(() => input.current?.click())}
      <input
        ref={input}
        type="file"
        accept=".zip,application/zip"
        hidden
        aria-label="A studio’s archive"
        onChange={(event) => void look(event.target.files?.[0])}
      />
      <Dialog
        title="Restore from an archive"
        isOpen={file !== null}
        staysOpen={share !== null}
        onClose={() => {
          if (share === null) close();
        }}
        actions={
          <>
            <Button onPress={close} isDisabled={share !== null}>
              Leave it
            </Button>
            <Button look="main" onPress={() => void restore()} isDisabled={!contents} isBusy={share !== null}>
              Restore
            </Button>
          </>
        }
      >
        {contents && <Contents contents={contents} />}
        {contents && !isFirst && (
          <p>It takes the place of what is here now. That is saved first, as a backup you can restore in turn.</p>
        )}
        {share !== null && (
          <label className={styles.progress}>
            <span>{share < 1 ? "On its way to the studio" : "Being put in place"}</span>
            <progress value={share < 1 ? share : undefined} max={1} />
          </label>
        )}
        <Problem error={error} />
      </Dialog>
    </>
  );
}

const Contents = ({ contents: { madeAt, studioName, counts } }: { readonly contents: ArchiveContents }) => (
  <div>
    <p>
      <strong>{studioName || "A studio without a name"}</strong>, saved {dayAndTime(madeAt)}
    </p>
    <ul>
      {counts.map(({ words }) => (
        <li key={words}>{words}</li>
      ))}
    </ul>
    {counts.length === 0 && <p>Nothing is in it.</p>}
  </div>
);
