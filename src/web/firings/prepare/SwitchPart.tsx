import { useId, useState } from "react";
import { useLocation } from "wouter";
import { CAUTIONS, CAUTIONS_FIRST } from "../../../sheets/cautions.ts";
import type { FiringRecord } from "../../../studio/records/firing-record.ts";
import { Button, CautionNote, Dialog, Sign } from "../../parts/index.ts";
import { useSettings } from "../../studio/hooks.ts";
import { MomentField } from "../start/MomentField.tsx";
import { useFiringCommands } from "../use-firing-commands.ts";
import styles from "./Preparing.module.css";

const HERE = ["Power", "Room about the kiln", "Air", "Eyes and skin"];

/** She has switched it on: from here on it is watched. */
export function SwitchPart({ firing }: { readonly firing: FiringRecord }) {
  const { lengthUnits } = useSettings();
  const id = useId();
  const [isAsking, setAsking] = useState(false);
  return (
    <section className={styles.part} aria-labelledby={id}>
      <h2 id={id}>Switch it on</h2>
      <CautionNote title="Wareboard never switches a kiln">
        You do, at the kiln, and you see that it goes off. {CAUTIONS_FIRST}
      </CautionNote>
      <details className={styles.more}>
        <summary>What to mind while it fires</summary>
        <ul>
          {CAUTIONS.filter(({ title }) => HERE.includes(title)).map(({ title, text, source }) => (
            <li key={title}>
              <b>{title}.</b> {text(lengthUnits)} <span className={styles.soft}>{source}</span>
            </li>
          ))}
        </ul>
      </details>
      <Button look="main" isWide onPress={() => setAsking(true)}>
        It is switched on
      </Button>
      {isAsking && <SwitchedOn firing={firing} onClose={() => setAsking(false)} />}
    </section>
  );
}

function SwitchedOn({ firing, onClose }: { readonly firing: FiringRecord; readonly onClose: () => void }) {
  const { start } = useFiringCommands();
  const [, go] = useLocation();
  const [now] = useState(() => new Date().toISOString());
  const [at, setAt] = useState<string | null>(now);
  const [isBusy, setBusy] = useState(false);
  const open = (firing.checklist ?? []).filter((each) => each.at === null).length;
  const isAhead = at !== null && Date.parse(at) > Date.now() + 60_000;
  const begin = async () => {
    setBusy(true);
    if (await start(firing, at ?? now)) go(`/firings/${firing.id}/watch`);
    else setBusy(false);
  };
  return (
    <Dialog
      title="It is switched on"
      isOpen
      onClose={onClose}
      actions={
        <>
          <Button onPress={onClose}>Not yet</Button>
          <Button look="main" isBusy={isBusy} isDisabled={at === null || isAhead} onPress={() => void begin()}>
            Yes, it fires
          </Button>
        </>
      }
    >
      <div className={styles.part}>
        {open > 0 && (
          <Sign kind="mind">
            {open === 1 ? "One thing is" : `${open} things are`} not ticked off yet. Look once more, or start all the
            same.
          </Sign>
        )}
        <MomentField
          label="Since when"
          hint="When you pressed the switch, by this device’s clock."
          value={at}
          max={now}
          problem={isAhead ? "That is still to come." : null}
          onChange={setAt}
        />
        <p>This only writes it down. The kiln is yours to switch.</p>
      </div>
    </Dialog>
  );
}
