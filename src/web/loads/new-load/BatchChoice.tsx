import type { WareRecord } from "../../../studio/records/ware-record.ts";
import { Checkbox, LengthText, NumberField, Sign } from "../../parts/index.ts";
import { dueWords } from "../../waiting/words/due-words.ts";
import { FIRING_WORDS } from "../../waiting/words/ware-words.ts";
import { type Choice, withCount } from "./choice.ts";
import type { FiringOffer } from "./firing-offers.ts";
import styles from "./NewLoad.module.css";

interface BatchChoiceProps {
  readonly offer: FiringOffer;
  readonly choice: Choice;
  readonly today: string;
  readonly onChange: (choice: Choice) => void;
}

/** Which batches, and how many of each. */
export function BatchChoice({ offer, choice, today, onChange }: BatchChoiceProps) {
  const all = offer.batches.every(({ id, ware }) => choice[id] === ware.count);
  const some = offer.batches.some(({ id }) => choice[id] !== undefined);
  const along = offer.along.filter((batch) => !offer.batches.includes(batch));
  const row = (batch: WareRecord) => (
    <BatchRow
      key={batch.id}
      batch={batch}
      count={choice[batch.id] ?? 0}
      today={today}
      isGuest={along.includes(batch)}
      onCount={(count) => onChange(withCount(choice, batch.id, count))}
    />
  );
  return (
    <section className={styles.batches} aria-label="Batches">
      <div className={styles.head}>
        <Checkbox
          isSelected={all}
          isMixed={!all && some}
          onChange={(chosen) =>
            onChange(chosen ? Object.fromEntries(offer.batches.map(({ id, ware }) => [id, ware.count])) : {})
          }
        >
          All that waits for it
        </Checkbox>
      </div>
      <ul className={styles.rows}>{offer.batches.map(row)}</ul>
      {along.length > 0 && (
        <details className={styles.along} open={along.some(({ id }) => choice[id] !== undefined)}>
          <summary>{along.length === 1 ? "1 batch" : `${along.length} batches`} could go along</summary>
          <p className={styles.soft}>
            Written down for another firing or without a cone, and nothing speaks against it.
          </p>
          <ul className={styles.rows}>{along.map(row)}</ul>
        </details>
      )}
    </section>
  );
}

interface BatchRowProps {
  readonly batch: WareRecord;
  readonly count: number;
  readonly today: string;
  readonly isGuest: boolean;
  readonly onCount: (count: number) => void;
}

function BatchRow({ batch, count, today, isGuest, onCount }: BatchRowProps) {
  const { ware, dueOn, firingKind } = batch;
  return (
    <li className={styles.row}>
      <Checkbox
        isSelected={count > 0}
        isMixed={count > 0 && count < ware.count}
        onChange={(chosen) => onCount(chosen ? ware.count : 0)}
        hint={
          <>
            <LengthText mm={ware.diameterMm} /> across, <LengthText mm={ware.heightMm} /> tall
            {isGuest && firingKind && ` · ${FIRING_WORDS[firingKind].toLowerCase()}`}
            {dueOn !== null && ` · wanted ${dueWords(dueOn, today)}`}
          </>
        }
      >
        {ware.name}
      </Checkbox>
      {ware.mustFire && <Sign kind="mind">Must go in</Sign>}
      <div className={styles.count}>
        <NumberField
          label={`How many of ${ware.name}`}
          isLabelHidden
          hasSteps
          value={count}
          min={0}
          max={ware.count}
          onChange={(typed) => onCount(typed ?? 0)}
        />
        <span className={styles.soft}>of {ware.count}</span>
      </div>
    </li>
  );
}
