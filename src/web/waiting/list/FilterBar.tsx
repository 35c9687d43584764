import { type KeyboardEvent, type Ref, useState } from "react";
import { Button, ChoiceField, CloseIcon, FilterIcon, TextField } from "../../parts/index.ts";
import { DUE_STRETCH_WORDS } from "../words/due-words.ts";
import { FIRING_WORDS, FORM_WORDS, STAGE_WORDS } from "../words/ware-words.ts";
import styles from "./FilterBar.module.css";
import { type Facet, type FacetValue, isOpen, NO_FILTER, toggled, type WareFilter } from "./ware-filter.ts";
import { WARE_ORDER_WORDS, WARE_ORDERS, type WareOrder } from "./ware-order.ts";

export interface FilterBarProps {
  readonly filter: WareFilter;
  readonly setFilter: (filter: WareFilter) => void;
  readonly values: Readonly<Record<Facet, readonly FacetValue[]>>;
  readonly order: WareOrder;
  readonly setOrder: (order: WareOrder) => void;
  readonly search: Ref<HTMLInputElement>;
  /** Down or Enter in the search: on to the list. */
  readonly toList: () => void;
}

const ORDERS = WARE_ORDERS.map((id) => ({ id, label: WARE_ORDER_WORDS[id] }));

/** What shows and in what order: words, and chips that say how many batches each would leave. */
export function FilterBar({ filter, setFilter, values, order, setOrder, search, toList }: FilterBarProps) {
  const [isMore, setMore] = useState(filter.chosen.stage.length + filter.chosen.form.length > 0);
  const chips = (facet: Facet, label: string) => (
    <Chips
      facet={facet}
      label={label}
      values={values[facet]}
      onPress={(value) => setFilter(toggled(filter, facet, value))}
    />
  );
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key !== "Enter" && event.key !== "ArrowDown") return;
    if (!(event.target instanceof HTMLInputElement)) return;
    event.preventDefault();
    toList();
  };
  return (
    <section className={styles.bar} aria-label="What the list shows">
      <div className={styles.top}>
        {/* biome-ignore lint/a11y/noStaticElementInteractions: a short way for the keyboard out of the field inside. */}
        <div className={styles.search} onKeyDown={onKeyDown}>
          <TextField
            ref={search}
            label="Search what waits"
            isLabelHidden
            isSearch
            placeholder="Search name, glaze, note"
            value={filter.words}
            onChange={(words) => setFilter({ ...filter, words })}
          />
        </div>
        <div className={styles.order}>
          <ChoiceField label="Order" isLabelHidden options={ORDERS} value={order} onChange={setOrder} />
        </div>
      </div>
      <div className={styles.facets}>
        {!isOpen(filter) && (
          <Button look="quiet" icon={<CloseIcon size={20} />} onPress={() => setFilter(NO_FILTER)}>
            Show all
          </Button>
        )}
        {chips("due", "Due")}
        {chips("kind", "Firing")}
        {chips("cone", "Cone")}
        {isMore && chips("stage", "Stage")}
        {isMore && chips("form", "Form")}
        <Button look="quiet" icon={<FilterIcon size={20} />} onPress={() => setMore(!isMore)}>
          {isMore ? "Fewer filters" : "Stage, form"}
        </Button>
      </div>
    </section>
  );
}

interface ChipsProps {
  readonly facet: Facet;
  readonly label: string;
  readonly values: readonly FacetValue[];
  readonly onPress: (value: string) => void;
}

function Chips({ facet, label, values, onPress }: ChipsProps) {
  if (values.length < 2 && !values.some(({ isChosen }) => isChosen)) return null;
  return (
    <fieldset className={styles.facet}>
      <legend className="heard">{label}</legend>
      <span className={styles.label} aria-hidden="true">
        {label}
      </span>
      {values.map(({ value, count, isChosen }) => (
        <button
          key={value}
          type="button"
          className={styles.chip}
          aria-pressed={isChosen}
          disabled={count === 0 && !isChosen}
          onClick={() => onPress(value)}
        >
          {valueWords(facet, value)} <span className={styles.number}>{count}</span>
        </button>
      ))}
    </fieldset>
  );
}

const WORDS: Readonly<Record<Facet, Readonly<Record<string, string>>>> = {
  due: DUE_STRETCH_WORDS,
  kind: { ...FIRING_WORDS, none: "Not said" },
  cone: { none: "No cone" },
  stage: STAGE_WORDS,
  form: { ...FORM_WORDS, none: "No form" },
};

const valueWords = (facet: Facet, value: string): string => WORDS[facet][value] ?? value;
