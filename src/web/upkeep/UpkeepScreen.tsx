import { lazy, Suspense, useMemo, useState } from "react";
import { useLocation, useParams } from "wouter";
import { CAUTIONS_FIRST } from "../../sheets/cautions.ts";
import { upkeepDue } from "../../studio/firings/upkeep-due.ts";
import type { FiringRecord } from "../../studio/records/firing-record.ts";
import type { KilnRecord } from "../../studio/records/kiln-record.ts";
import type { UpkeepRecord, UpkeepWork } from "../../studio/records/upkeep-record.ts";
import { useAction } from "../actions/registry.ts";
import { AddIcon, Button, Menu, NothingHere, Page, Spinner } from "../parts/index.ts";
import { useFirings, useKiln, useUpkeep } from "../studio/hooks.ts";
import { AgesPart } from "./ages/AgesPart.tsx";
import { RemindersPart } from "./ages/RemindersPart.tsx";
import { ShelvesPart } from "./ages/ShelvesPart.tsx";
import { BookPart } from "./book/BookPart.tsx";
import { ElementsPart } from "./elements/ElementsPart.tsx";
import { WORK_WORDS } from "./noting/work-words.ts";
import styles from "./Upkeep.module.css";

const NoteDialog = lazy(() => import("./noting/NoteDialog.tsx"));

const WORK = Object.keys(WORK_WORDS) as UpkeepWork[];

/** What keeps a kiln in repair: what is due, how its elements wear, how long each part has served, the book. */
export default function UpkeepScreen() {
  const { kilnId = "" } = useParams<{ kilnId: string }>();
  const kiln = useKiln(kilnId);
  const firings = useFirings();
  const upkeep = useUpkeep();
  if (kiln === undefined || !firings || !upkeep) return <Spinner />;
  if (kiln === null) {
    return (
      <NothingHere
        title="Upkeep"
        back={{ href: "/kilns", label: "All kilns" }}
        heading="This kiln is not here"
        words="It may have been removed. Undo in the list of kilns brings it back."
      />
    );
  }
  return <Kept kiln={kiln} firings={firings} upkeep={upkeep} />;
}

interface KeptProps {
  readonly kiln: KilnRecord;
  readonly firings: readonly FiringRecord[];
  readonly upkeep: readonly UpkeepRecord[];
}

function Kept({ kiln, firings, upkeep }: KeptProps) {
  const [, go] = useLocation();
  const [noting, setNoting] = useState<UpkeepWork | null>(null);
  const due = useMemo(() => upkeepDue(kiln, upkeep, firings), [kiln, upkeep, firings]);
  const book = upkeep.filter(({ kilnId }) => kilnId === kiln.id);
  const { name } = kiln.kiln;
  useAction({
    ...{ id: "note-upkeep", name: "Note that the elements were measured", group: "Kilns" },
    run: () => setNoting("element resistance"),
  });
  const note = (...works: readonly UpkeepWork[]) =>
    works.map((work) => (
      <Button key={work} onPress={() => setNoting(work)}>
        {WORK_WORDS[work]}
      </Button>
    ));
  return (
    <Page
      title="Upkeep"
      back={{ href: `/kilns/${kiln.id}`, label: `To ${name}` }}
      undoScope="kilns"
      below={name}
      actions={
        <>
          <Menu
            label="Note work done"
            look="main"
            icon={<AddIcon />}
            items={WORK.map((work) => ({ id: work, label: WORK_WORDS[work], onPress: () => setNoting(work) }))}
          >
            Note work
          </Menu>
          <Menu
            label={`More of ${name}`}
            items={[
              { id: "learn", label: "How it fires", onPress: () => go(`/learn/${kiln.id}`) },
              { id: "firings", label: "Firings", onPress: () => go("/firings") },
            ]}
          />
        </>
      }
    >
      <div className={styles.columns}>
        <div className={styles.column}>
          <RemindersPart reminders={due.reminders} />
          <ElementsPart elements={due.elements} actions={note("element resistance", "elements changed")} />
        </div>
        <div className={styles.column}>
          <AgesPart due={due} />
          <ShelvesPart shelves={due.shelves} actions={note("shelf washed", "shelf turned", "shelf cracked")} />
          <BookPart book={book} />
        </div>
      </div>
      <p className={styles.soft}>{CAUTIONS_FIRST}</p>
      <Suspense fallback={null}>
        {noting && <NoteDialog kiln={kiln} what={noting} book={book} onClose={() => setNoting(null)} />}
      </Suspense>
    </Page>
  );
}
