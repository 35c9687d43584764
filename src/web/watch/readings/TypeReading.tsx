import { useState } from "react";
import type { ReadingsKept } from "../../../studio/api/readings-contract.ts";
import type { FiringRecord } from "../../../studio/records/firing-record.ts";
import { Button, ChoiceField, Dialog, Problem, tell } from "../../parts/index.ts";
import { ask } from "../../studio/client.ts";
import { useKiln, useSettings } from "../../studio/hooks.ts";
import styles from "./Readings.module.css";
import { afterKey, typedTemperature } from "./typed-number.ts";

const KEYS = ["7", "8", "9", "4", "5", "6", "1", "2", "3", "back", "0"] as const;

interface TypeReadingProps {
  readonly firing: FiringRecord;
  readonly onClose: () => void;
}

/** One temperature, typed in beside the kiln on keys that a gloved finger hits. */
export default function TypeReading({ firing, onClose }: TypeReadingProps) {
  const { temperatureUnits: units } = useSettings();
  const probes = (useKiln(firing.kilnId)?.kiln.probes ?? []).map(({ name }) => name);
  const [probe, setProbe] = useState<string | null>(null);
  const [typed, setTyped] = useState("");
  const [isBusy, setBusy] = useState(false);
  const [problem, setProblem] = useState<unknown>(null);
  const value = typedTemperature(typed, units);
  const keep = async () => {
    if (value === null) return;
    setBusy(true);
    setProblem(null);
    try {
      const which = probe ?? (probes.length === 0 ? "by eye" : undefined);
      const body = { [units === "F" ? "tempF" : "tempC"]: value, ...(which === undefined ? {} : { probe: which }) };
      await ask<ReadingsKept>(`/firings/${encodeURIComponent(firing.id)}/readings`, { body });
      tell(`Written down: ${value} °${units}`);
      onClose();
    } catch (error) {
      setProblem(error);
      setBusy(false);
    }
  };
  return (
    <Dialog
      title="What does it read?"
      isOpen
      onClose={onClose}
      actions={
        <>
          <Button onPress={onClose}>Leave it</Button>
          <Button look="main" isBusy={isBusy} isDisabled={value === null} onPress={() => void keep()}>
            Write it down
          </Button>
        </>
      }
    >
      <div className={styles.pad}>
        <output className={styles.typed} aria-live="polite">
          {typed === "" ? "–" : typed} °{units}
        </output>
        {typed !== "" && value === null && <p className={styles.wrong}>Hotter than any studio kiln.</p>}
        <fieldset
          className={styles.keys}
          aria-label="Number keys"
          onKeyDown={(event) => {
            if (/^\d$/.test(event.key)) setTyped((before) => afterKey(before, event.key));
            else if (event.key === "Backspace") setTyped((before) => afterKey(before, "back"));
          }}
        >
          {KEYS.map((key) => (
            <button key={key} type="button" onClick={() => setTyped((before) => afterKey(before, key))}>
              {key === "back" ? "Back" : key}
            </button>
          ))}
          <button type="button" onClick={() => setTyped("")}>
            Clear
          </button>
        </fieldset>
        {probes.length > 1 && (
          <ChoiceField
            label="Which probe"
            options={probes.map((name) => ({ id: name, label: name }))}
            value={probe ?? (probes[0] as string)}
            onChange={setProbe}
          />
        )}
        <Problem error={problem} />
      </div>
    </Dialog>
  );
}
