import { Button } from "../parts/Button.tsx";
import { OpenFileIcon, SaveIcon } from "../parts/icons.tsx";
import { tell } from "../parts/tell.ts";
import styles from "./ArchiveSection.module.css";
import { Backups } from "./Backups.tsx";
import { EmptyStudio } from "./EmptyStudio.tsx";
import { RestoreArchive } from "./RestoreArchive.tsx";
import { Section } from "./Section.tsx";

/** The whole studio in one file; backups; and the way back. */
export function ArchiveSection() {
  return (
    <Section title="Archive and backups">
      <p>
        An archive is the whole studio in one file: kilns, ware, loads, notes and photos. Keep one on another machine.
      </p>
      <div className={styles.buttons}>
        {/* A plain link: the browser saves the file, and shows how far it has come. */}
        <a className={styles.save} href="/api/archive" download>
          <SaveIcon /> Save an archive
        </a>
        <RestoreArchive
          onRestored={(saved) =>
            tell(saved === null ? "Restored." : "Restored. What was here before is the newest backup below.")
          }
        >
          {(choose) => (
            <Button icon={<OpenFileIcon />} onPress={choose}>
              Restore from an archive
            </Button>
          )}
        </RestoreArchive>
      </div>
      <Backups />
      <EmptyStudio />
    </Section>
  );
}
