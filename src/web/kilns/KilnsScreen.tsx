import { useState } from "react";
import { Link, useLocation } from "wouter";
import type { KilnRecord } from "../../studio/records/kiln-record.ts";
import type { LoadRecord } from "../../studio/records/load-record.ts";
import { useAction } from "../actions/registry.ts";
import {
  AddIcon,
  BinIcon,
  Button,
  CopyIcon,
  Empty,
  Menu,
  Page,
  Problem,
  Spinner,
  tell,
  wordsOf,
} from "../parts/index.ts";
import { newId, StudioRefusal, useCommand, useKilns, useLoads, useSettings, useUndo } from "../studio/hooks.ts";
import { AddKilnDialog } from "./AddKilnDialog.tsx";
import { KilnPicture } from "./drawing/KilnPicture.tsx";
import styles from "./KilnsScreen.module.css";
import { freeName, type KilnDraft } from "./kiln-draft.ts";
import { chamberText, inUseWords, shelvesText, volumeText } from "./kiln-words.ts";

/** Her kilns, each with its size, its furniture and its loads. */
export default function KilnsScreen() {
  const kilns = useKilns();
  const loads = useLoads();
  const command = useCommand();
  const { undo } = useUndo("kilns");
  const [, go] = useLocation();
  const [isAdding, setAdding] = useState(false);
  const [problem, setProblem] = useState<unknown>(null);
  useAction({ id: "add-kiln", name: "Add a kiln", keys: "n", group: "Kilns", run: () => setAdding(true) });

  // What she took back herself before it was saved is no problem to tell her of.
  const refused = (error: unknown) => {
    if (!(error instanceof StudioRefusal)) throw error;
    setProblem(error);
  };
  const add = (draft: KilnDraft): string => {
    const id = newId();
    const now = new Date().toISOString();
    command("add-kiln", { id, ...draft }, (cache) =>
      cache.put("kilns", { id, ...draft, createdAt: now, changedAt: now }),
    ).catch(refused);
    return id;
  };
  const takenNames = (kilns ?? []).map(({ kiln }) => kiln);
  const copy = ({ kiln, furniture, rules }: KilnRecord) => {
    add({ kiln: { ...kiln, name: freeName(kiln.name, takenNames) }, furniture, rules });
    tell(`Copied ${kiln.name}`);
  };
  const remove = ({ id, kiln }: KilnRecord, itsLoads: readonly LoadRecord[]) => {
    if (itsLoads.length > 0) return setProblem(inUseWords(kiln.name, itsLoads));
    setProblem(null);
    command("remove-kiln", { id }, (cache) => cache.remove("kilns", id)).then(
      () => tell(`Removed ${kiln.name}`, () => void undo().catch((error) => tell(wordsOf(error)))),
      refused,
    );
  };
  const addButton = (
    <Button look="main" icon={<AddIcon />} onPress={() => setAdding(true)}>
      Add a kiln
    </Button>
  );

  return (
    <Page title="Kilns" undoScope="kilns" actions={kilns && kilns.length > 0 && addButton}>
      <Problem error={problem} />
      {kilns === undefined ? (
        <Spinner words="Looking for your kilns" />
      ) : kilns.length === 0 ? (
        <Empty
          title="No kiln yet"
          words="A load is planned for one kiln: its inside, its shelves and posts, where its probe and spyholes are. Start from the size nearest to yours; measuring it takes ten minutes."
          action={addButton}
        />
      ) : (
        <ul className={styles.cards}>
          {kilns.map((record) => {
            const itsLoads = (loads ?? []).filter(({ kilnId }) => kilnId === record.id);
            return (
              <KilnCard
                key={record.id}
                record={record}
                loads={itsLoads}
                onCopy={() => copy(record)}
                onRemove={() => remove(record, itsLoads)}
              />
            );
          })}
        </ul>
      )}
      {isAdding && (
        <AddKilnForScreen
          taken={takenNames}
          onClose={() => setAdding(false)}
          onAdd={(draft) => {
            setAdding(false);
            go(`/kilns/${add(draft)}`);
          }}
        />
      )}
    </Page>
  );
}

function AddKilnForScreen(props: {
  readonly taken: readonly { readonly name: string }[];
  readonly onClose: () => void;
  readonly onAdd: (draft: KilnDraft) => void;
}) {
  const { lengthUnits } = useSettings();
  return <AddKilnDialog {...props} isOpen units={lengthUnits} />;
}

const SHOWN_LOADS = 3;

interface KilnCardProps {
  readonly record: KilnRecord;
  readonly loads: readonly LoadRecord[];
  readonly onCopy: () => void;
  readonly onRemove: () => void;
}

function KilnCard({ record, loads, onCopy, onRemove }: KilnCardProps) {
  const { lengthUnits } = useSettings();
  const { kiln, furniture } = record;
  const newest = [...loads].sort((a, b) => (a.changedAt < b.changedAt ? 1 : -1));
  return (
    <li className={styles.card}>
      <Link className={styles.open} href={`/kilns/${record.id}`}>
        <span className={styles.picture}>
          <KilnPicture kiln={kiln} />
        </span>
        <span className={styles.words}>
          <strong className={styles.name}>{kiln.name}</strong>
          <span>{volumeText(kiln.chamber, lengthUnits)}</span>
          <span className={styles.soft}>{chamberText(kiln.chamber, lengthUnits)}</span>
          <span className={styles.soft}>{shelvesText(furniture)}</span>
        </span>
      </Link>
      <div className={styles.foot}>
        <span className={styles.loads}>
          {loads.length === 0 ? (
            <span className={styles.soft}>No loads yet</span>
          ) : (
            newest.slice(0, SHOWN_LOADS).map((load) => (
              <Link key={load.id} className={styles.load} href={`/loads/${load.id}`}>
                {load.name}
              </Link>
            ))
          )}
          {loads.length > SHOWN_LOADS && <span className={styles.soft}>and {loads.length - SHOWN_LOADS} more</span>}
        </span>
        <Menu
          label={`More for ${kiln.name}`}
          items={[
            { id: "copy", label: "Copy", icon: <CopyIcon />, onPress: onCopy },
            { id: "remove", label: "Remove", icon: <BinIcon />, isDanger: true, onPress: onRemove },
          ]}
        />
      </div>
    </li>
  );
}
