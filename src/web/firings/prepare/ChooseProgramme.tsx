import { useState } from "react";
import type { Programme } from "../../../firing/programme/programme.ts";
import type { FiringRecord } from "../../../studio/records/firing-record.ts";
import type { LoadRecord } from "../../../studio/records/load-record.ts";
import type { ProgrammeRecord } from "../../../studio/records/programme-record.ts";
import { Button, Dialog, Tabs } from "../../parts/index.ts";
import { useFirings, useWare } from "../../studio/hooks.ts";
import type { LoadedKiln } from "../foretelling/kiln-answers.ts";
import styles from "../programmes/Programmes.module.css";
import { programmeWords } from "../programmes/programme-words.ts";
import { WriteForm } from "../programmes/WriteForm.tsx";
import { useFiringCommands } from "../use-firing-commands.ts";
import { firedLately } from "./fired-lately.ts";
import { usualWish } from "./usual-wish.ts";

interface ChooseProgrammeProps {
  readonly firing: FiringRecord;
  readonly kiln: LoadedKiln | null;
  readonly load: LoadRecord | null;
  readonly own: readonly ProgrammeRecord[];
  readonly onClose: () => void;
}

/** Another programme for a firing: written for what stands in the load, one of her own, or one fired lately. */
export default function ChooseProgramme({ firing, kiln, load, own, onClose }: ChooseProgrammeProps) {
  const { chooseProgramme } = useFiringCommands();
  const ware = useWare();
  const firings = useFirings() ?? [];
  const [tab, setTab] = useState<"write" | "own" | "lately">("write");
  const [written, setWritten] = useState<Programme | null>(null);
  const choose = (programme: Programme) => {
    chooseProgramme(firing, programme);
    onClose();
  };
  const lately = firedLately(firings, firing.kilnId);
  const first =
    load && ware ? usualWish(load, ware) : { cone: "6" as const, kind: "glaze" as const, pace: "medium" as const };
  return (
    <Dialog
      title="Another programme"
      isOpen
      isWide
      onClose={onClose}
      actions={
        tab === "write" && (
          <Button look="main" isDisabled={written === null} onPress={() => written && choose(written)}>
            Use it
          </Button>
        )
      }
    >
      <div className={styles.editor}>
        <Tabs
          label="Where it comes from"
          value={tab}
          onChange={setTab}
          tabs={[
            {
              id: "write",
              label: "Written for this load",
              content: ware && <WriteForm first={first} kiln={kiln} onWritten={setWritten} />,
            },
            {
              id: "own",
              label: `My own${own.length > 0 ? ` (${own.length})` : ""}`,
              content: (
                <>
                  {own.length === 0 && <p>None yet.</p>}
                  <ul className={styles.list}>
                    {own.map(({ id, programme, note }) => (
                      <Choosable key={id} programme={programme} note={note} onChoose={() => choose(programme)} />
                    ))}
                  </ul>
                  <Button look="quiet" href="/programmes">
                    Write, change or take in programmes
                  </Button>
                </>
              ),
            },
            {
              id: "lately",
              label: "Fired lately",
              content:
                lately.length === 0 ? (
                  <p>Nothing was fired in this kiln yet.</p>
                ) : (
                  <ul className={styles.list}>
                    {lately.map(({ id, programme, note }) => (
                      <Choosable key={id} programme={programme} note={note} onChoose={() => choose(programme)} />
                    ))}
                  </ul>
                ),
            },
          ]}
        />
      </div>
    </Dialog>
  );
}

interface ChoosableProps {
  readonly programme: Programme;
  readonly note: string;
  readonly onChoose: () => void;
}

const Choosable = ({ programme, note, onChoose }: ChoosableProps) => (
  <li className={`${styles.item} ${styles.inDialog}`}>
    <div>
      <p>{programmeWords(programme)}</p>
      <p className={styles.soft}>
        {programme.segments.length} segments{note && ` · ${note}`}
      </p>
    </div>
    <Button label={`Use ${programme.name}`} onPress={onChoose}>
      Use it
    </Button>
  </li>
);
