import { useState } from "react";
import { LID_LIFTS_C } from "../../../firing/prediction/cool-steps.ts";
import { formatTemperature, parseTemperatureC } from "../../../measures/temperature.ts";
import type { FiringRecord } from "../../../studio/records/firing-record.ts";
import { MomentField } from "../../firings/start/MomentField.tsx";
import { dayClockWords } from "../../firings/words/clock-words.ts";
import { kWhWords } from "../../firings/words/figures.ts";
import { Button, CautionNote, NumberField, Problem, Sign, TextField, tell, wordsOf } from "../../parts/index.ts";
import { useCommand, useSettings } from "../../studio/hooks.ts";
import { TakenBack } from "../../studio/sending.ts";
import { sendLater } from "../waiting/waiting-sends.ts";
import { meterPair, usedKWh } from "./meter.ts";
import styles from "./Opening.module.css";
import { OPENING_CAUTION, openingWords } from "./opening-words.ts";
import { useOpeningTemperature } from "./use-opening-temperature.ts";

/** The kiln is opened: when, how warm it was inside, what the meter shows. */
export function OpeningPart({ firing, onKept }: { readonly firing: FiringRecord; readonly onKept?: () => void }) {
  const command = useCommand();
  const { temperatureUnits, lengthUnits } = useSettings();
  const pair = meterPair(firing);
  const [openedAt, setOpenedAt] = useState<string | null>(() => firing.endedAt ?? new Date().toISOString());
  const [temperature, setTemperature] = useState("");
  const [before, setBefore] = useState(pair.before?.kWh ?? null);
  const [after, setAfter] = useState(pair.after?.kWh ?? null);
  const [problem, setProblem] = useState<unknown>(null);
  const measuredC = useOpeningTemperature(firing);
  const read = readTemperature(temperature, temperatureUnits);
  const shownC = read.celsius ?? measuredC;
  const isCooling = firing.state === "cooling";
  const used = usedKWh(pair);

  const refused = (error: unknown) => {
    if (!(error instanceof TakenBack)) setProblem(error);
  };
  const keep = () => {
    setProblem(null);
    const { id } = firing;
    if (openedAt !== null && isCooling) {
      command("end-firing", { id, at: openedAt }, (cache) =>
        cache.patch("firings", id, (was) => ({ ...was, state: "finished", endedAt: openedAt })),
      ).catch(refused);
    } else if (openedAt !== null && openedAt !== firing.endedAt) {
      command("change-firing", { id, endedAt: openedAt }, (cache) =>
        cache.patch("firings", id, (was) => ({ ...was, endedAt: openedAt })),
      ).catch(refused);
    }
    const meter = (at: string, kWh: number) =>
      command("read-meter", { id, at, kWh }, (cache) =>
        cache.patch("firings", id, (was) => ({
          ...was,
          meterReadings: [...was.meterReadings.filter((each) => each.at !== at), { at, kWh }].sort((a, b) =>
            a.at < b.at ? -1 : 1,
          ),
        })),
      ).catch(refused);
    const startedAt = pair.before?.at ?? firing.startedAt;
    if (before !== null && before !== pair.before?.kWh && startedAt !== null) void meter(startedAt, before);
    if (after !== null && after !== pair.after?.kWh) {
      void meter(pair.after?.at ?? openedAt ?? new Date().toISOString(), after);
    }
    if (read.celsius !== null && openedAt !== null) {
      const json = { at: openedAt, tempC: read.celsius };
      sendLater({ path: `/firings/${id}/readings`, about: "The temperature at opening", json }).then(
        () => setTemperature(""),
        setProblem,
      );
    }
    tell("Kept with the firing");
    onKept?.();
  };

  return (
    <div className={styles.opening}>
      {OPENING_CAUTION && <CautionNote title="Opening">{OPENING_CAUTION.text(lengthUnits)}</CautionNote>}
      <SafeOpening firing={firing} />
      <div className={styles.fields}>
        <MomentField
          label="Opened"
          value={openedAt}
          onChange={setOpenedAt}
          min={firing.shutOffAt ?? firing.startedAt ?? undefined}
        />
        <TextField
          label={`Temperature inside as it was opened, °${temperatureUnits}`}
          value={temperature}
          onChange={setTemperature}
          problem={read.problem}
        />
      </div>
      <p role="status">
        {shownC !== null && (
          <Sign kind={openingWords(shownC).kind}>
            {formatTemperature(shownC, temperatureUnits)}: {openingWords(shownC).words.toLowerCase()}
          </Sign>
        )}
      </p>
      <div className={styles.fields}>
        <NumberField label="Meter before, kWh" value={before} onChange={setBefore} min={0} isFraction />
        <NumberField label="Meter after, kWh" value={after} onChange={setAfter} min={0} isFraction />
      </div>
      {used !== null && (
        <p>
          It took {kWhWords(used)}
          {firing.foretold ? `; ${kWhWords(firing.foretold.kWh)} were foretold` : ""}.
        </p>
      )}
      <Problem error={problem} />
      <div>
        <Button look="main" onPress={keep} isDisabled={read.problem !== undefined}>
          {isCooling ? "It is open" : "Keep this"}
        </Button>
      </div>
    </div>
  );
}

/** When it was foretold to be cool enough, where that is known. */
function SafeOpening({ firing }: { readonly firing: FiringRecord }) {
  const { shutOffAt, foretold, state } = firing;
  const hours = foretold?.coolHours[LID_LIFTS_C] ?? null;
  if (state !== "cooling" || shutOffAt === undefined || hours === null) return null;
  const at = dayClockWords(shutOffAt, hours * 60);
  return (
    <p>
      Foretold to be below {LID_LIFTS_C} °C at the probe on {at}. Measure before you lift the lid.
    </p>
  );
}

function readTemperature(text: string, units: "C" | "F"): { celsius: number | null; problem?: string } {
  if (text.trim() === "") return { celsius: null };
  try {
    return { celsius: parseTemperatureC(text, units) };
  } catch (error) {
    return { celsius: null, problem: wordsOf(error) };
  }
}
