import type { Probe, Spyhole } from "../../kiln/kiln.ts";
import { AddIcon, BinIcon, Button, Checkbox, IconButton, LengthField, TextField } from "../parts/index.ts";
import { DirectionField } from "./DirectionField.tsx";
import { type Fitting, isSame } from "./drawing/fitting.ts";
import { type PartProps, withOne } from "./editing.ts";
import fields from "./Fields.module.css";
import { freeName, type KilnDraft } from "./kiln-draft.ts";
import styles from "./Parts.module.css";

export type View = "above" | "front";

interface WallPartProps extends PartProps {
  readonly selected: Fitting | null;
  readonly onSelect: (fitting: Fitting | null) => void;
  /** Which drawing shows best what is typed. */
  readonly onView: (view: View) => void;
}

const USUAL_REACH_MM = 25;
const USUAL_HOLE_MM = 20;

/** What sits in the wall: probes and spyholes, each in numbers. */
export function WallPart(props: WallPartProps) {
  const { draft, change, onSelect } = props;
  const probes = draft.kiln.probes ?? [];
  const spyholes = draft.kiln.spyholes ?? [];
  const halfWay = Math.round(draft.kiln.chamber.depthMm / 2);
  const addProbe = () => {
    const probe = { name: freeName("probe", probes), angleDeg: 0, heightMm: halfWay, reachMm: USUAL_REACH_MM };
    change((was) => ({ ...was, kiln: { ...was.kiln, probes: [...probes, probe] } }));
    onSelect({ kind: "probe", index: probes.length });
  };
  const addSpyhole = () => {
    const name = freeName("spyhole", spyholes);
    const spyhole = { name, angleDeg: 270, heightMm: halfWay, diameterMm: USUAL_HOLE_MM, open: false };
    change((was) => ({ ...was, kiln: { ...was.kiln, spyholes: [...spyholes, spyhole] } }));
    onSelect({ kind: "spyhole", index: spyholes.length });
  };
  return (
    <div className={fields.stack}>
      <h2>Probes</h2>
      {probes.length === 0 && (
        <p className={fields.hint}>A thermocouple or pyrometer tube that sticks into the chamber.</p>
      )}
      {probes.map((probe, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: its place is its name for the drawing and the errors
        <FittingFields key={index} {...props} fitting={{ kind: "probe", index }} thing={probe} />
      ))}
      <div>
        <Button icon={<AddIcon />} onPress={addProbe}>
          Add a probe
        </Button>
      </div>
      <h2>Spyholes</h2>
      {spyholes.length === 0 && <p className={fields.hint}>Holes to look at the cones through.</p>}
      {spyholes.map((spyhole, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: its place is its name for the drawing and the errors
        <FittingFields key={index} {...props} fitting={{ kind: "spyhole", index }} thing={spyhole} />
      ))}
      <div>
        <Button icon={<AddIcon />} onPress={addSpyhole}>
          Add a spyhole
        </Button>
      </div>
    </div>
  );
}

interface FittingFieldsProps extends WallPartProps {
  readonly fitting: Fitting;
  readonly thing: Probe | Spyhole;
}

function FittingFields({ fitting, thing, change, problemAt, selected, onSelect, onView }: FittingFieldsProps) {
  const path = `kiln.${fitting.kind}s[${fitting.index}]`;
  const set = (part: Partial<Probe> | Partial<Spyhole> | null) => {
    change((was) => withFitting(was, fitting, part));
    if (part && "heightMm" in part) onView("front");
    if (part && ("angleDeg" in part || "reachMm" in part)) onView("above");
  };
  const isSelected = isSame(selected, fitting);
  return (
    <fieldset className={`${styles.block} ${isSelected ? styles.selected : ""}`} onFocus={() => onSelect(fitting)}>
      <legend className="heard">{thing.name || fitting.kind}</legend>
      <div className={styles.blockHead}>
        <TextField
          label="Name"
          value={thing.name}
          maxLength={120}
          onChange={(name) => set({ name })}
          problem={problemAt(`${path}.name`)}
        />
        <IconButton
          label={`Remove ${thing.name || fitting.kind}`}
          icon={<BinIcon />}
          onPress={() => {
            set(null);
            onSelect(null);
          }}
        />
      </div>
      <div className={fields.row}>
        <DirectionField label="Toward" angleDeg={thing.angleDeg} onChange={(angleDeg) => set({ angleDeg })} />
        <LengthField
          label="Above the floor"
          valueMm={thing.heightMm}
          onChange={(heightMm) => heightMm !== null && set({ heightMm })}
          problem={problemAt(`${path}.heightMm`)}
        />
        {"reachMm" in thing ? (
          <LengthField
            label="Sticks in by"
            valueMm={thing.reachMm}
            onChange={(reachMm) => reachMm !== null && set({ reachMm })}
            problem={problemAt(`${path}.reachMm`)}
          />
        ) : (
          <LengthField
            label="Across the hole"
            valueMm={thing.diameterMm}
            onChange={(diameterMm) => diameterMm !== null && set({ diameterMm })}
            problem={problemAt(`${path}.diameterMm`)}
          />
        )}
      </div>
      {"open" in thing && (
        <Checkbox isSelected={thing.open} onChange={(open) => set({ open })}>
          Open while firing: no plug in it
        </Checkbox>
      )}
    </fieldset>
  );
}

function withFitting(draft: KilnDraft, { kind, index }: Fitting, part: object | null): KilnDraft {
  const { kiln } = draft;
  const change = <Thing,>(thing: Thing): Thing | null => (part === null ? null : { ...thing, ...part });
  return kind === "probe"
    ? { ...draft, kiln: { ...kiln, probes: withOne(kiln.probes ?? [], index, change) } }
    : { ...draft, kiln: { ...kiln, spyholes: withOne(kiln.spyholes ?? [], index, change) } };
}
