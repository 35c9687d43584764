import { useId } from "react";
import { dueWords } from "../../waiting/words/due-words.ts";
import { batches, FIRING_WORDS, pieces } from "../../waiting/words/ware-words.ts";
import type { FiringOffer } from "./firing-offers.ts";
import styles from "./NewLoad.module.css";

interface FiringChoiceProps {
  readonly offers: readonly FiringOffer[];
  readonly value: string;
  readonly today: string;
  readonly onChange: (id: string) => void;
}

/** Which firing: each that waiting ware asks for, with what it holds. */
export function FiringChoice({ offers, value, today, onChange }: FiringChoiceProps) {
  const name = useId();
  return (
    <fieldset className={styles.firings}>
      <legend>Firing</legend>
      {offers.map((offer) => (
        <label key={offer.id} className={styles.firing}>
          <input
            type="radio"
            name={name}
            value={offer.id}
            checked={offer.id === value}
            onChange={() => onChange(offer.id)}
          />
          <span>
            <strong>
              {FIRING_WORDS[offer.kind]}, {offer.cone ? `cone ${offer.cone}` : "no cone yet"}
            </strong>
            <span className={styles.soft}>
              {pieces(offer.pieces)} in {batches(offer.batches.length)}
              {offer.dueOn !== null && ` · soonest wanted ${dueWords(offer.dueOn, today)}`}
            </span>
          </span>
        </label>
      ))}
    </fieldset>
  );
}
