import { useState } from "react";
import { formatConeRange } from "../../firing/cones/cone-range.ts";
import type { ClayBodyRecord, GlazeRecord } from "../../studio/records/clay-and-glaze-records.ts";
import { AddIcon, BinIcon, Button, EditIcon, IconButton, Sign } from "../parts/index.ts";
import { batches } from "../waiting/words/ware-words.ts";
import { MaterialForm } from "./MaterialForm.tsx";
import styles from "./Materials.module.css";
import { EMPTY_MATERIAL, materialDraft } from "./material-draft.ts";
import { type MaterialKind, useMaterialCommands } from "./use-material-commands.ts";

type Material = ClayBodyRecord | GlazeRecord;

const WORDS = {
  clayBodies: {
    title: "Clay bodies",
    add: "New clay body",
    empty: "What you make pots of, and the cones each matures at: hotter it slumps, cooler it stays open.",
  },
  glazes: {
    title: "Glazes",
    add: "New glaze",
    empty: "What your pots wear, the cones each melts well at, and whether it runs. A batch then needs only its name.",
  },
} as const;

export interface MaterialListProps {
  readonly kind: MaterialKind;
  readonly materials: readonly Material[];
  /** How many batches use each, by its id. */
  readonly uses: ReadonlyMap<string, number>;
}

/** All clay bodies, or all glazes: each changed where it stands. */
export function MaterialList({ kind, materials, uses }: MaterialListProps) {
  const commands = useMaterialCommands(kind);
  const [open, setOpen] = useState<string | "new" | null>(null);
  const words = WORDS[kind];
  const close = () => setOpen(null);
  const namesBut = (id: string | null) =>
    new Set(materials.filter((each) => each.id !== id).map(({ name }) => name.trim().toLowerCase()));
  const sorted = [...materials].sort((a, b) => a.name.localeCompare(b.name));
  return (
    <section className={styles.list} aria-labelledby={`materials-${kind}`}>
      <h2 id={`materials-${kind}`}>{words.title}</h2>
      {materials.length === 0 && open !== "new" && <p className={styles.soft}>{words.empty}</p>}
      <ul className={styles.rows}>
        {sorted.map((material) =>
          open === material.id ? (
            <li key={material.id}>
              <MaterialForm
                kind={kind}
                begin={materialDraft(material)}
                taken={namesBut(material.id)}
                doneWords="Done"
                onLeave={close}
                onDone={(draft) => {
                  commands.change(material.id, draft);
                  close();
                }}
              />
            </li>
          ) : (
            <Row
              key={material.id}
              material={material}
              uses={uses.get(material.id) ?? 0}
              onEdit={() => setOpen(material.id)}
              onRemove={() => commands.remove(material.id, material.name)}
            />
          ),
        )}
      </ul>
      {open === "new" ? (
        <MaterialForm
          kind={kind}
          begin={EMPTY_MATERIAL}
          taken={namesBut(null)}
          doneWords="Add"
          onLeave={close}
          onDone={(draft) => {
            commands.add(draft);
            close();
          }}
        />
      ) : (
        <Button icon={<AddIcon />} onPress={() => setOpen("new")}>
          {words.add}
        </Button>
      )}
    </section>
  );
}

interface RowProps {
  readonly material: Material;
  readonly uses: number;
  readonly onEdit: () => void;
  readonly onRemove: () => void;
}

function Row({ material, uses, onEdit, onRemove }: RowProps) {
  const { name, cones, note } = material;
  const runs = "runs" in material && material.runs;
  const usedBy = uses === 0 ? "not used by any batch" : `used by ${batches(uses)}`;
  return (
    <li className={styles.row}>
      <div className={styles.words}>
        <strong>{name}</strong>
        <span className={styles.soft}>
          {cones ? formatConeRange(cones) : "no cones said"}, {usedBy}
        </span>
        {runs && <Sign kind="mind">Runs</Sign>}
        {note && <span className={styles.note}>{note}</span>}
      </div>
      <IconButton label={`Change ${name}`} icon={<EditIcon />} onPress={onEdit} />
      <IconButton
        label={uses === 0 ? `Remove ${name}` : `${name} is ${usedBy}: change those first`}
        icon={<BinIcon />}
        isDisabled={uses > 0}
        onPress={onRemove}
      />
    </li>
  );
}
