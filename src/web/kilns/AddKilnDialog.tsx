import { useState } from "react";
import type { Chamber } from "../../kiln/chamber.ts";
import { READY_MADE_KILNS } from "../../kiln/ready-made-kilns.ts";
import type { LengthUnits } from "../../measures/length.ts";
import { Button, Dialog, TextField } from "../parts/index.ts";
import styles from "./AddKilnDialog.module.css";
import { ChamberFields } from "./ChamberFields.tsx";
import { KilnPicture } from "./drawing/KilnPicture.tsx";
import { problemAt } from "./field-problem.ts";
import { kilnFromMeasures } from "./from-measures.ts";
import { draftFault, freeName, type KilnDraft } from "./kiln-draft.ts";
import { aboutVolumeText, chamberText, volumeText } from "./kiln-words.ts";

interface AddKilnDialogProps {
  readonly isOpen: boolean;
  readonly units: LengthUnits;
  /** Names of the kilns there are. */
  readonly taken: readonly { readonly name: string }[];
  readonly onClose: () => void;
  readonly onAdd: (kiln: KilnDraft) => void;
}

/** A new kiln: from a generic size, or from her own measures. */
export function AddKilnDialog(props: AddKilnDialogProps) {
  const [byMeasures, setByMeasures] = useState(false);
  const close = () => {
    setByMeasures(false);
    props.onClose();
  };
  return byMeasures ? (
    <FromMeasures {...props} onClose={close} onBack={() => setByMeasures(false)} />
  ) : (
    <ReadyMade {...props} onClose={close} onMeasures={() => setByMeasures(true)} />
  );
}

function ReadyMade(props: AddKilnDialogProps & { readonly onMeasures: () => void }) {
  const { units, taken, onAdd } = props;
  return (
    <Dialog title="Add a kiln" isOpen={props.isOpen} onClose={props.onClose} isWide>
      <p>
        Choose the size nearest to yours and set it right afterwards, rule in hand. These are usual sizes, nobody’s own
        kiln.
      </p>
      <ul className={styles.list}>
        {READY_MADE_KILNS.map((each) => (
          <li key={each.id}>
            <button
              type="button"
              className={styles.choice}
              onClick={() => {
                const kiln = { ...each.kiln, name: freeName(each.words, taken) };
                onAdd({ kiln, furniture: each.furniture, rules: {} });
              }}
            >
              <span className={styles.picture}>
                <KilnPicture kiln={each.kiln} />
              </span>
              <span>
                <strong>
                  {each.words}, {aboutVolumeText(each.kiln.chamber, units)}
                </strong>
                <small>{chamberText(each.kiln.chamber, units)}</small>
              </span>
            </button>
          </li>
        ))}
      </ul>
      <Button onPress={props.onMeasures}>Start from my own measures</Button>
    </Dialog>
  );
}

const FIRST_CHAMBER: Chamber = { shape: "polygon", sides: 8, acrossFlatsMm: 400, depthMm: 450 };

function FromMeasures(props: AddKilnDialogProps & { readonly onBack: () => void }) {
  const { units, taken, onAdd } = props;
  const [name, setName] = useState(freeName("my kiln", taken));
  const [chamber, setChamber] = useState<Chamber>(FIRST_CHAMBER);
  const draft = kilnFromMeasures(name.trim(), chamber);
  const fault = draftFault(draft);
  return (
    <Dialog
      title="A kiln from its measures"
      isOpen={props.isOpen}
      onClose={props.onClose}
      staysOpen
      actions={
        <>
          <Button look="quiet" onPress={props.onBack}>
            Back
          </Button>
          <Button look="main" isDisabled={fault !== null} onPress={() => onAdd(draft)}>
            Add this kiln
          </Button>
        </>
      }
    >
      <TextField label="Name" value={name} onChange={setName} problem={problemAt(fault, "kiln.name", units)} />
      <ChamberFields
        chamber={chamber}
        onChange={setChamber}
        problemAt={(field) => problemAt(fault, `kiln.chamber.${field}`, units)}
      />
      <div className={styles.preview}>
        <KilnPicture kiln={draft.kiln} />
        <p>
          {volumeText(chamber, units)}. It begins with three shelves that fit and a usual kit of posts; probe, spyholes
          and your own furniture come next.
        </p>
      </div>
    </Dialog>
  );
}
