import type { KilnBuild } from "../../kiln/build.ts";
import {
  AddIcon,
  BinIcon,
  Button,
  CautionNote,
  ChoiceField,
  IconButton,
  LengthField,
  NumberField,
} from "../parts/index.ts";
import { type PartProps, withOne } from "./editing.ts";
import fields from "./Fields.module.css";
import styles from "./Parts.module.css";

type Layer = NonNullable<KilnBuild["wall"]>[number];

const MATERIALS = [
  { id: "brick 23", label: "Brick, class 23" },
  { id: "brick 26", label: "Brick, class 26" },
  { id: "fibre", label: "Ceramic fibre" },
] as const;
const MOST_LAYERS = 5;

/** What the kiln is heated by and built of: only for foretelling firings. */
export function BuildPart({ draft, change, problemAt }: PartProps) {
  const build = draft.kiln.build ?? {};
  const wall = build.wall ?? [];
  const set = (part: Partial<KilnBuild>) =>
    change((was) => {
      const next = Object.fromEntries(
        Object.entries({ ...was.kiln.build, ...part }).filter(([, value]) => value !== undefined),
      ) as KilnBuild;
      const { build: _, ...kiln } = was.kiln;
      return { ...was, kiln: Object.keys(next).length === 0 ? kiln : { ...kiln, build: next } };
    });
  const number = (field: "powerW" | "ratedVolts" | "suppliedVolts", label: string, max: number) => (
    <NumberField
      label={label}
      isFraction
      min={0}
      max={max}
      value={build[field] ?? null}
      problem={problemAt(`kiln.build.${field}`)}
      onChange={(value) => set({ [field]: value === null || value === 0 ? undefined : value } as Partial<KilnBuild>)}
    />
  );
  return (
    <div className={fields.stack}>
      <CautionNote title="From the kiln’s own plate and manual">
        Copy these off the rating plate and the manual. Open no panel and measure no mains: that is a licensed
        electrician’s work. What is left empty is taken as usual for a kiln of this size.
      </CautionNote>
      <div className={fields.row}>
        {number("powerW", "Power, watts", 200_000)}
        {number("ratedVolts", "Volts on the plate", 1000)}
        {number("suppliedVolts", "Volts while firing, if known", 1000)}
        <NumberField
          label="Elements worn by, %"
          min={0}
          max={90}
          value={build.wornShare === undefined ? null : Math.round(build.wornShare * 100)}
          problem={problemAt("kiln.build.wornShare")}
          onChange={(percent) => set({ wornShare: percent === null ? undefined : percent / 100 } as Partial<KilnBuild>)}
        />
      </div>
      <h2>Wall, from the inside out</h2>
      {wall.map((layer, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: two layers may be alike
        <div key={index} className={styles.blockHead}>
          <div className={fields.row}>
            <ChoiceField
              label="Layer of"
              options={MATERIALS}
              value={layer.material}
              onChange={(material) => set({ wall: withOne(wall, index, (was) => ({ ...was, material })) })}
            />
            <LengthField
              label="Thick"
              valueMm={layer.thicknessMm}
              problem={problemAt(`kiln.build.wall[${index}].thicknessMm`)}
              onChange={(mm) =>
                mm !== null && set({ wall: withOne(wall, index, (was) => ({ ...was, thicknessMm: mm })) })
              }
            />
          </div>
          <IconButton
            label="Remove this layer"
            icon={<BinIcon />}
            onPress={() => {
              const next = withOne(wall, index, () => null);
              set({ wall: next.length === 0 ? undefined : next } as Partial<KilnBuild>);
            }}
          />
        </div>
      ))}
      {wall.length < MOST_LAYERS && (
        <div>
          <Button icon={<AddIcon />} onPress={() => set({ wall: [...wall, USUAL_LAYER] })}>
            Add a layer
          </Button>
        </div>
      )}
    </div>
  );
}

// As the firing model takes for granted. Common practice, no source.
const USUAL_LAYER: Layer = { material: "brick 23", thicknessMm: 64 };
