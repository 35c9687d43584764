import { useState } from "react";
import type { NewLogger } from "../../../studio/api/readings-contract.ts";
import type { FiringRecord } from "../../../studio/records/firing-record.ts";
import type { LoggerRecord } from "../../../studio/records/logger-record.ts";
import { undoLast } from "../../loads/undo-last.ts";
import { Button, ChoiceField, CopyIcon, Dialog, Problem, Sign, TextField, tell, wordsOf } from "../../parts/index.ts";
import { ask } from "../../studio/client.ts";
import { newId, useCommand, useKiln, useLoggers } from "../../studio/hooks.ts";
import styles from "./Readings.module.css";
import { curlLine, fitsTopic, mqttTopic } from "./send-words.ts";

interface SendersProps {
  readonly firing: FiringRecord;
  readonly onClose: () => void;
}

/** What sends this kiln's temperatures, and how another is added. They only come in: nothing goes out to the kiln. */
export default function Senders({ firing, onClose }: SendersProps) {
  const kiln = useKiln(firing.kilnId);
  const loggers = (useLoggers() ?? []).filter(({ kilnId }) => kilnId === firing.kilnId);
  const [made, setMade] = useState<{ readonly token: string; readonly name: string } | null>(null);
  return (
    <Dialog
      title="What sends the temperatures"
      isOpen
      isWide
      staysOpen={made !== null}
      onClose={onClose}
      actions={
        <Button look={made === null ? "plain" : "main"} onPress={onClose}>
          {made === null ? "Close" : "I have the token"}
        </Button>
      }
    >
      <div className={styles.steps}>
        <p>
          <strong>Readings only come in.</strong> Nothing goes out to the kiln: Wareboard cannot switch it, slow it or
          stop it.
        </p>
        {made === null ? (
          <>
            <Known loggers={loggers} />
            <Add kilnId={firing.kilnId} probes={(kiln?.kiln.probes ?? []).map(({ name }) => name)} onMade={setMade} />
          </>
        ) : (
          <Made {...made} />
        )}
      </div>
    </Dialog>
  );
}

function Known({ loggers }: { readonly loggers: readonly LoggerRecord[] }) {
  const command = useCommand();
  if (loggers.length === 0) return null;
  const remove = async ({ id, name }: LoggerRecord): Promise<void> => {
    try {
      await command("remove-logger", { id }, (cache) => cache.remove("loggers", id));
      tell(`${name} is not listened to any more`, () => void undoLast("kilns"));
    } catch (error) {
      tell(wordsOf(error));
    }
  };
  return (
    <ul className={styles.loggers} aria-label="Listened to">
      {loggers.map((logger) => (
        <li key={logger.id}>
          <span>
            <b>{logger.name}</b> <span className={styles.soft}>{logger.probe}</span>
          </span>
          <Button look="quiet" label={`Listen no more to ${logger.name}`} onPress={() => void remove(logger)}>
            Listen no more
          </Button>
        </li>
      ))}
    </ul>
  );
}

interface AddProps {
  readonly kilnId: string;
  readonly probes: readonly string[];
  readonly onMade: (made: { readonly token: string; readonly name: string }) => void;
}

function Add({ kilnId, probes, onMade }: AddProps) {
  const [name, setName] = useState("");
  const [probe, setProbe] = useState<string | null>(null);
  const [isBusy, setBusy] = useState(false);
  const [problem, setProblem] = useState<unknown>(null);
  const chosen = probe ?? probes[0] ?? "probe";
  const add = async (): Promise<void> => {
    setBusy(true);
    setProblem(null);
    try {
      const body = { id: newId(), kilnId, probe: chosen, name: name.trim() };
      onMade({ token: (await ask<NewLogger>("/loggers", { body })).token, name: body.name });
    } catch (error) {
      setProblem(error);
    }
    setBusy(false);
  };
  return (
    <form
      className={styles.steps}
      onSubmit={(event) => {
        event.preventDefault();
        if (name.trim() !== "") void add();
      }}
    >
      <h3>Add a logger</h3>
      <TextField
        label="Its name"
        hint="A short word, such as kiln-shed."
        value={name}
        onChange={setName}
        maxLength={60}
        problem={name === "" || fitsTopic(name.trim()) ? null : "Without + # and /."}
      />
      {probes.length > 1 && (
        <ChoiceField
          label="The probe it reads"
          options={probes.map((each) => ({ id: each, label: each }))}
          value={chosen}
          onChange={setProbe}
        />
      )}
      <Button isSubmit isBusy={isBusy} isDisabled={!fitsTopic(name.trim())}>
        Add it and show its token
      </Button>
      <Problem error={problem} />
    </form>
  );
}

function Made({ token, name }: { readonly token: string; readonly name: string }) {
  return (
    <>
      <Sign kind="mind">
        The token is shown now and never again. Who has it can send temperatures, and nothing else.
      </Sign>
      <Copied label="The token" text={token} />
      <Copied label="At a terminal, one temperature" text={curlLine(location.origin, token)} />
      <p className={styles.soft}>
        Many at once: {`{"readings": [{"at": "2026-11-25T09:47:32Z", "tempC": 640}, …]}`}. Sending one twice does no
        harm.
      </p>
      <Copied label="By MQTT, where the studio is served with --mqtt: the topic" text={mqttTopic(name)} />
    </>
  );
}

function Copied({ label, text }: { readonly label: string; readonly text: string }) {
  const copy = (): void => {
    navigator.clipboard?.writeText(text).then(
      () => tell("Copied"),
      () => tell("This browser does not let it be copied: mark it by hand."),
    );
  };
  return (
    <div className={styles.copied}>
      <span className={styles.soft}>{label}</span>
      <code>{text}</code>
      <Button look="quiet" icon={<CopyIcon />} label={`Copy: ${label}`} onPress={copy}>
        Copy
      </Button>
    </div>
  );
}
