import { type ChangeEvent, useRef, useState } from "react";
import { formatTemperature } from "../../../measures/temperature.ts";
import type { LogAnswers, LogFile, LogLook } from "../../../studio/api/readings-contract.ts";
import type { FiringRecord } from "../../../studio/records/firing-record.ts";
import { MomentField } from "../../firings/start/MomentField.tsx";
import { dayClockWords } from "../../firings/words/clock-words.ts";
import { Button, Dialog, OpenFileIcon, Problem, Sign, tell } from "../../parts/index.ts";
import { ask } from "../../studio/client.ts";
import { useSettings } from "../../studio/hooks.ts";
import styles from "./Readings.module.css";

interface BringLogProps {
  readonly firing: FiringRecord;
  readonly onClose: () => void;
}

/** A log's file brought in: what the file leaves open is asked, one thing after another, and shown before it is kept. */
export default function BringLog({ firing, onClose }: BringLogProps) {
  const input = useRef<HTMLInputElement>(null);
  const [file, setFile] = useState<LogFile | null>(null);
  const [look, setLook] = useState<LogLook | null>(null);
  const [isBusy, setBusy] = useState(false);
  const [problem, setProblem] = useState<unknown>(null);
  const send = async (sent: LogFile, isPreview: boolean): Promise<void> => {
    setBusy(true);
    setProblem(null);
    try {
      const path = `/firings/${encodeURIComponent(firing.id)}/readings-csv${isPreview ? "?preview=1" : ""}`;
      const seen = await ask<LogLook>(path, { body: sent });
      setFile(sent);
      setLook(seen);
      if (seen.kind === "log" && seen.kept) {
        tell("The log is kept with this firing");
        onClose();
      }
    } catch (error) {
      setProblem(error);
    }
    setBusy(false);
  };
  const chosen = (event: ChangeEvent<HTMLInputElement>): void => {
    const picked = event.target.files?.[0];
    event.target.value = "";
    if (picked) void picked.text().then((csv) => send({ csv }, true));
  };
  const answer = (options: LogAnswers): void => {
    if (file !== null) void send({ csv: file.csv, options }, true);
  };
  return (
    <Dialog
      title="Bring in a log"
      isOpen
      isWide
      onClose={onClose}
      actions={
        <>
          <Button icon={<OpenFileIcon />} isBusy={isBusy && look === null} onPress={() => input.current?.click()}>
            {look === null ? "Choose a file" : "Another file"}
          </Button>
          {look?.kind === "log" && file !== null && (
            <Button look="main" isBusy={isBusy} onPress={() => void send(file, false)}>
              Keep it with this firing
            </Button>
          )}
        </>
      }
    >
      <input ref={input} type="file" accept=".csv,.txt,.tsv,text/csv,text/plain" hidden onChange={chosen} />
      <div className={styles.steps}>
        {look === null && <p>A text file with times and temperatures (CSV), as loggers and controllers write them.</p>}
        {look?.kind === "question" && (
          <Question key={look.question} look={look} answers={file?.options ?? {}} onAnswer={answer} isBusy={isBusy} />
        )}
        {look?.kind === "log" && <Log look={look} />}
        <Problem error={problem} />
      </div>
    </Dialog>
  );
}

interface QuestionProps {
  readonly look: Extract<LogLook, { kind: "question" }>;
  readonly answers: LogAnswers;
  readonly onAnswer: (options: LogAnswers) => void;
  readonly isBusy: boolean;
}

function Question({ look, answers, onAnswer, isBusy }: QuestionProps) {
  const [startsAt, setStartsAt] = useState<string | null>(null);
  return (
    <>
      <h3>{look.question}</h3>
      <div className={styles.choices}>
        {look.choices.map(({ options, means }) => (
          <Button key={JSON.stringify(options)} isDisabled={isBusy} onPress={() => onAnswer(options)}>
            {means}
          </Button>
        ))}
      </div>
      {look.about === "startsAt" && (
        <div className={styles.choices}>
          <MomentField label="Or at another time" value={startsAt} onChange={setStartsAt} />
          <Button
            isDisabled={isBusy || startsAt === null}
            onPress={() => startsAt !== null && onAnswer({ ...answers, startsAt })}
          >
            Then
          </Button>
        </div>
      )}
    </>
  );
}

function Log({ look }: { readonly look: Extract<LogLook, { kind: "log" }> }) {
  const { temperatureUnits: units } = useSettings();
  return (
    <>
      <p>
        <strong>
          {dayClockWords(look.from)} to {dayClockWords(look.to)}
        </strong>
      </p>
      <ul className={styles.list}>
        {look.probes.map(({ column, probe, count, leastC, mostC }) => (
          <li key={column}>
            {column === probe ? probe : `${column}, kept as ${probe}`}: {count} readings,{" "}
            {formatTemperature(leastC, units)} to {formatTemperature(mostC, units)}
          </li>
        ))}
      </ul>
      {look.dropped.length > 0 && (
        <Sign kind="mind">
          {look.dropped.length === 1 ? "One line is" : `${look.dropped.length} lines are`} left out. The first: line{" "}
          {look.dropped[0]?.line}, {look.dropped[0]?.why}
        </Sign>
      )}
      {look.notes.map((note) => (
        <p key={note} className={styles.soft}>
          {note}
        </p>
      ))}
    </>
  );
}
