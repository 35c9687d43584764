import { type ReactNode, useId } from "react";
import { moneyWords } from "../../firings/words/figures.ts";
import { Button, Sign } from "../../parts/index.ts";
import { useSettings } from "../../studio/hooks.ts";
import styles from "../Money.module.css";

interface PricesPartProps {
  readonly currency: string;
  readonly onTariff: () => void;
  readonly onWear: () => void;
  readonly onFee: () => void;
}

/** What all sums rest on: electricity, wear, fees. Each is set in place. */
export function PricesPart({ currency, onTariff, onWear, onFee }: PricesPartProps) {
  const id = useId();
  const { tariff, elementSetPrice, elementLifeFirings, shelfPrice, shelfLifeFirings, guestFee } = useSettings();
  const money = (value: number): string => moneyWords(value, currency);
  const slots = tariff?.slots?.length ?? 0;
  const worn = (price: number | undefined, life: number | undefined): string | null =>
    price === undefined || life === undefined ? null : `${money(price)} over ${life} firings`;
  return (
    <section className={styles.part} aria-labelledby={id}>
      <h2 id={id}>What the sums rest on</h2>
      <dl className={styles.prices}>
        <Price
          what="Electricity"
          words={
            tariff &&
            `${money(tariff.pricePerKWh)} a kWh${slots === 0 ? "" : slots === 1 ? ", other hours at another price" : `, ${slots} other prices by the hour`}`
          }
          missing="Nothing says what it costs: energy is left out"
          about="what electricity costs"
          onPress={onTariff}
        />
        <Price
          what="A set of elements"
          words={worn(elementSetPrice, elementLifeFirings)}
          missing="Left out"
          about="what elements and shelves cost"
          onPress={onWear}
        />
        <Price
          what="A shelf"
          words={worn(shelfPrice, shelfLifeFirings)}
          missing="Left out"
          about="what shelves and elements cost"
          onPress={onWear}
        />
        <Price
          what="Guests pay"
          words={guestFee && `${money(guestFee.perLitre)} a litre, ${money(guestFee.perFiring)} a firing`}
          missing="Not set"
          about="what guests pay"
          onPress={onFee}
        />
      </dl>
    </section>
  );
}

interface PriceProps {
  readonly what: string;
  readonly words: string | null | undefined;
  readonly missing: string;
  /** What its button changes, for ears. */
  readonly about: string;
  readonly onPress: () => void;
}

function Price({ what, words, missing, about, onPress }: PriceProps) {
  const shown: ReactNode = words ?? <Sign kind="mind">{missing}</Sign>;
  return (
    <div>
      <dt>{what}</dt>
      <dd className={styles.price}>
        {shown}
        <Button look="quiet" label={`${words ? "Change" : "Set"} ${about}`} onPress={onPress}>
          {words ? "Change" : "Set"}
        </Button>
      </dd>
    </div>
  );
}
