import { type CSSProperties, type MouseEvent, memo } from "react";
import { formatLengthNumber, type LengthUnits } from "../../../measures/length.ts";
import tick from "../../parts/Field.module.css";
import { PieceIcon } from "../drawing/PieceIcon.tsx";
import { FIRING_WORDS, STAGE_WORDS } from "../words/ware-words.ts";
import { ConeCell } from "./ConeCell.tsx";
import { CountCell } from "./CountCell.tsx";
import { DueCell } from "./DueCell.tsx";
import styles from "./WareRow.module.css";
import type { WaitingBatch } from "./waiting-batch.ts";

/** What a row can ask for. The same object for all rows and all time, so that a row is drawn anew only for its own sake. */
export interface RowHands {
  readonly press: (id: string, withShift: boolean) => void;
  readonly open: (id: string) => void;
  readonly activate: (id: string) => void;
  readonly setCount: (id: string, count: number) => void;
  readonly setCone: (id: string, cone: string) => void;
  readonly setDue: (id: string, dueOn: string | null) => void;
}

export interface WareRowProps {
  readonly record: WaitingBatch["record"];
  readonly glaze: string;
  readonly clayBody: string;
  readonly inLoads: number;
  readonly units: LengthUnits;
  readonly today: string;
  readonly isChosen: boolean;
  /** The one row that Tab comes to. */
  readonly isActive: boolean;
  /** Its place in the whole list, from 1. */
  readonly place: number;
  readonly top: number;
  readonly height: number;
  readonly hands: RowHands;
}

export const rowId = (id: string): string => `ware-row-${id}`;

/** One batch in the list. */
export const WareRow = memo(function WareRow(props: WareRowProps) {
  const { record, glaze, clayBody, inLoads, units, today, isChosen, isActive, place, hands } = props;
  const { id, ware, stage, firingKind, dueOn } = record;
  const tabIndex = isActive ? 0 : -1;
  const size = `${formatLengthNumber(ware.diameterMm, units)} × ${formatLengthNumber(ware.heightMm, units)}`;
  const where: CSSProperties = { transform: `translateY(${props.top}px)`, height: props.height };
  const open = (event: MouseEvent) => {
    if (event.target instanceof Element && event.target.closest("button, input, select, label")) return;
    hands.open(id);
  };
  return (
    // Enter and "e" open it too, from the list of actions.
    <tr
      id={rowId(id)}
      aria-rowindex={place + 1}
      aria-selected={isChosen}
      tabIndex={tabIndex}
      className={isChosen ? `${styles.row} ${styles.chosen}` : styles.row}
      style={where}
      onClick={open}
      onFocus={() => isActive || hands.activate(id)}
    >
      <td className={styles.tick}>
        <label className={tick.check}>
          <input
            type="checkbox"
            tabIndex={tabIndex}
            aria-label={`Choose ${ware.name}`}
            checked={isChosen}
            onChange={(event) =>
              hands.press(id, (event.nativeEvent as unknown as { shiftKey?: boolean }).shiftKey === true)
            }
          />
        </label>
      </td>
      <td className={styles.what}>
        <PieceIcon seen={ware} sizePx={48} />
        <div className={styles.words}>
          <span className={styles.name}>{ware.name}</span>
          <span className={styles.soft}>
            {size} {units === "inches" ? "in" : "mm"}
            {inLoads > 0 && <span className={styles.inLoad}>{inLoads} in a load</span>}
          </span>
          <span className={`${styles.soft} ${styles.brief}`}>
            {firingKind ? `${FIRING_WORDS[firingKind]} firing` : STAGE_WORDS[stage]}
            {glaze && `, ${glaze}`}
            {ware.mustFire && <span className={styles.must}>must fire</span>}
          </span>
        </div>
      </td>
      <td className={styles.firing}>
        <span>{firingKind ? `${FIRING_WORDS[firingKind]} firing` : "No firing said"}</span>
        <span className={styles.soft}>
          {STAGE_WORDS[stage]}
          {ware.mustFire && <span className={styles.must}>must fire</span>}
        </span>
      </td>
      <td className={styles.material}>
        <span className={styles.oneLine}>{glaze || "No glaze yet"}</span>
        <span className={`${styles.soft} ${styles.oneLine}`}>{clayBody}</span>
      </td>
      <td className={styles.counting}>
        <CountCell
          name={ware.name}
          count={ware.count}
          tabIndex={tabIndex}
          onChange={(count) => hands.setCount(id, count)}
        />
      </td>
      <td className={styles.coning}>
        <ConeCell
          name={ware.name}
          cone={ware.cone ?? ""}
          tabIndex={tabIndex}
          onChange={(cone) => hands.setCone(id, cone)}
        />
      </td>
      <td className={styles.waiting}>
        <DueCell
          name={ware.name}
          dueOn={dueOn}
          today={today}
          tabIndex={tabIndex}
          onChange={(day) => hands.setDue(id, day)}
        />
      </td>
    </tr>
  );
});
