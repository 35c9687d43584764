import { Tabs } from "../parts/index.ts";
import { type Fitting, type WallPlace, withFittingAt } from "./drawing/fitting.ts";
import { PlanDrawing } from "./drawing/PlanDrawing.tsx";
import { SideDrawing } from "./drawing/SideDrawing.tsx";
import type { PartProps } from "./editing.ts";
import styles from "./KilnScreen.module.css";
import type { View } from "./WallPart.tsx";

interface DrawingsProps extends PartProps {
  readonly selected: Fitting | null;
  readonly onSelect: (fitting: Fitting) => void;
  /** Which of the two shows where there is room for one. */
  readonly view: View;
  readonly onView: (view: View) => void;
}

const VIEWS = [
  { id: "above", label: "From above" },
  { id: "front", label: "From the front" },
] as const;

/** The kiln from above and from the front, side by side; on a phone one of them at a time. */
export function Drawings({ draft, units, change, selected, onSelect, view, onView }: DrawingsProps) {
  const move = (fitting: Fitting, to: Partial<WallPlace>) =>
    change((was) => ({ ...was, kiln: withFittingAt(was.kiln, fitting, to) }));
  const hidden = (which: View) => (view === which ? "" : styles.hiddenWhenNarrow);
  return (
    <>
      <div className={styles.views}>
        <Tabs label="Drawing" tabs={VIEWS} value={view} onChange={onView} />
      </div>
      <div className={styles.pair}>
        <figure className={`${styles.figure} ${hidden("above")}`}>
          <PlanDrawing kiln={draft.kiln} selected={selected} onSelect={onSelect} onMove={move} />
          <figcaption>From above. You stand at 6 o’clock.</figcaption>
        </figure>
        <figure className={`${styles.figure} ${hidden("front")}`}>
          <SideDrawing kiln={draft.kiln} units={units} selected={selected} onSelect={onSelect} onMove={move} />
          <figcaption>From the front, cut open.</figcaption>
        </figure>
      </div>
      <p className={styles.hint}>Drag a probe or spyhole, or move it with the arrow keys.</p>
    </>
  );
}
