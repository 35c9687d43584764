import { useState } from "react";
import type { Tariff } from "../../../firing/tariff/tariff.ts";
import { BadInput } from "../../../measures/bad-input.ts";
import {
  AddIcon,
  BinIcon,
  Button,
  type Choice,
  ChoiceField,
  Dialog,
  Field,
  IconButton,
  NumberField,
  Problem,
  TextField,
} from "../../parts/index.ts";
import { useCommand, useSettings } from "../../studio/hooks.ts";
import styles from "./Tariff.module.css";
import { draftOfTariff, NEW_SLOT, type SlotDays, type SlotDraft, tariffOfDraft } from "./tariff-draft.ts";

const HOW = [
  { id: "flat", label: "The same at all times" },
  { id: "slots", label: "By time of day" },
] as const;
const DAYS: readonly Choice<SlotDays>[] = [
  { id: "every day", label: "Every day" },
  { id: "weekdays", label: "Monday to Friday" },
  { id: "weekend", label: "Saturday and Sunday" },
];
const OWN_DAYS: Choice<SlotDays> = { id: "as before", label: "Days of its own" };

/** What electricity costs, for every firing and every price. */
export default function TariffDialog({ tariff, onClose }: { tariff: Tariff | null; onClose: () => void }) {
  const { currency } = useSettings();
  const command = useCommand();
  const [draft, setDraft] = useState(() => draftOfTariff(tariff));
  const [problem, setProblem] = useState<BadInput | null>(null);
  const [error, setError] = useState<unknown>(null);
  const how = draft.slots.length === 0 ? "flat" : "slots";
  const timeZone = tariff?.timeZone ?? Intl.DateTimeFormat().resolvedOptions().timeZone;
  const each = currency === "" ? "A kilowatt-hour costs" : `A kilowatt-hour costs, ${currency}`;
  const at = (path: string) => (problem?.path === path ? `Here should be ${problem.expected}.` : null);
  const set = (slots: readonly SlotDraft[]) => {
    setDraft({ ...draft, slots });
    setProblem(null);
  };
  const keep = async () => {
    try {
      const next = tariffOfDraft(draft, tariff, timeZone);
      await command("change-settings", { tariff: next }, (cache) => cache.settings({ tariff: next }));
      onClose();
    } catch (caught) {
      if (caught instanceof BadInput) setProblem(caught);
      else setError(caught);
    }
  };
  const forget = () => {
    command("change-settings", { tariff: null }).then(onClose, setError);
  };
  return (
    <Dialog
      title="What electricity costs"
      isOpen
      isWide
      onClose={onClose}
      actions={
        <>
          {tariff !== null && (
            <Button look="quiet" onPress={forget}>
              Price nothing
            </Button>
          )}
          <Button look="main" onPress={() => void keep()}>
            Keep it
          </Button>
        </>
      }
    >
      <div className={styles.form}>
        <p>
          As on your bill, taxes in. It prices every firing, here and wherever costs are told. Times are by the clock of{" "}
          {timeZone.replaceAll("_", " ")}.
        </p>
        <ChoiceField
          label="The price is"
          look="row"
          options={HOW}
          value={how}
          onChange={(to) => set(to === "flat" ? [] : [NEW_SLOT])}
        />
        <NumberField
          label={how === "flat" ? each : `${each}, at all other times`}
          isFraction
          isShort
          min={0}
          max={1_000_000}
          value={draft.pricePerKWh}
          problem={at("pricePerKWh")}
          onChange={(pricePerKWh) => {
            setDraft({ ...draft, pricePerKWh });
            setProblem(null);
          }}
        />
        {how === "slots" && (
          <ul className={styles.slots}>
            {draft.slots.map((slot, i) => (
              <SlotFields
                // biome-ignore lint/suspicious/noArrayIndexKey: its place is its name for the errors; names change while typed
                key={i}
                slot={slot}
                priceLabel={each}
                problemAt={(field) => at(`slots[${i}].${field}`) ?? (field === "to" ? at(`slots[${i}]`) : null)}
                onChange={(next) =>
                  set(next === null ? draft.slots.filter((_, n) => n !== i) : draft.slots.with(i, next))
                }
              />
            ))}
          </ul>
        )}
        {how === "slots" && (
          <div>
            <Button
              icon={<AddIcon />}
              onPress={() => set([...draft.slots, { ...NEW_SLOT, name: "", from: "06:00", to: "10:00" }])}
            >
              Add other hours
            </Button>
          </div>
        )}
        <Problem error={error} />
      </div>
    </Dialog>
  );
}

interface SlotFieldsProps {
  readonly slot: SlotDraft;
  readonly priceLabel: string;
  readonly problemAt: (field: string) => string | null;
  readonly onChange: (slot: SlotDraft | null) => void;
}

function SlotFields({ slot, priceLabel, problemAt, onChange }: SlotFieldsProps) {
  const time = (field: "from" | "to", label: string) => (
    <Field label={label} problem={problemAt(field)}>
      {(ties) => (
        <input
          {...ties}
          type="time"
          value={slot[field] === "24:00" ? "00:00" : slot[field]}
          onChange={({ target }) => {
            const { value } = target;
            onChange({ ...slot, [field]: field === "to" && value === "00:00" ? "24:00" : value });
          }}
        />
      )}
    </Field>
  );
  const days = slot.rest.weekdays && slot.days === "as before" ? [...DAYS, OWN_DAYS] : DAYS;
  return (
    <li className={styles.slot}>
      <TextField
        label="Called"
        value={slot.name}
        maxLength={120}
        problem={problemAt("name")}
        onChange={(name) => onChange({ ...slot, name })}
      />
      {time("from", "From")}
      {time("to", "To")}
      <ChoiceField
        label="On"
        options={days}
        value={slot.days}
        onChange={(chosen) => onChange({ ...slot, days: chosen })}
      />
      <NumberField
        label={priceLabel}
        isFraction
        min={0}
        max={1_000_000}
        value={slot.pricePerKWh}
        problem={problemAt("pricePerKWh")}
        onChange={(pricePerKWh) => onChange({ ...slot, pricePerKWh })}
      />
      <IconButton label={`Remove ${slot.name || "these hours"}`} icon={<BinIcon />} onPress={() => onChange(null)} />
    </li>
  );
}
