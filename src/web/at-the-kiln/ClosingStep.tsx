import { CAUTIONS, CAUTIONS_FIRST } from "../../sheets/cautions.ts";
import { Button, CautionNote, Sign } from "../parts/index.ts";
import { useConnection, useSettings } from "../studio/hooks.ts";
import styles from "./KilnWalk.module.css";
import type { Walk } from "./use-walk.ts";
import type { WalkStep } from "./walk.ts";

interface ClosingStepProps {
  readonly walk: Walk;
  readonly onGoTo: (at: number) => void;
}

/** Those of the cautions that matter between the lid and the first heat. */
const BEFORE_THE_HEAT = ["Room about the kiln", "Air", "Power"];

/** The lid: what is still open, the cautions before the heat, and the load marked as in. */
export function ClosingStep({ walk, onGoTo }: ClosingStepProps) {
  const { lengthUnits } = useSettings();
  const connection = useConnection();
  const { steps, done, progress, isClosed } = walk;
  const open = steps.filter(({ key }) => !done.has(key));
  if (isClosed) {
    return (
      <>
        <h2 className={styles.text}>The load is in: {progress.piecesIn} pieces.</h2>
        <Sign kind="keeps">
          {connection === "here" ? "Marked as loaded" : "Marked on this device; the studio will know when it answers"}
        </Sign>
        <div>
          <Button look="quiet" onPress={() => walk.setClosed(false)}>
            The lid is open again
          </Button>
        </div>
      </>
    );
  }
  return (
    <>
      <h2 className={styles.text}>{open.length === 0 ? "Close the lid" : "Not everything is done"}</h2>
      {open.length > 0 && (
        <ul className={styles.open}>
          {open.map((step) => (
            <li key={step.key}>
              <Button look="plain" isWide onPress={() => onGoTo(steps.indexOf(step))}>
                {openWords(step)}
              </Button>
            </li>
          ))}
        </ul>
      )}
      {open.length === 0 && (
        <>
          <CautionNote title="First">{CAUTIONS_FIRST}</CautionNote>
          {CAUTIONS.filter(({ title }) => BEFORE_THE_HEAT.includes(title)).map(({ title, text, source }) => (
            <details key={title} className={styles.caution}>
              <summary>{title}</summary>
              <p>{text(lengthUnits)}</p>
              <p className={styles.source}>{source}</p>
            </details>
          ))}
        </>
      )}
      <Button
        look={open.length === 0 ? "main" : "plain"}
        isWide
        isDisabled={!progress.allIn}
        onPress={() => walk.setClosed(true)}
      >
        {open.length === 0
          ? "The lid is closed"
          : progress.allIn
            ? "The lid is closed all the same"
            : "Pieces are missing"}
      </Button>
    </>
  );
}

const openWords = (step: WalkStep): string =>
  step.kind === "piece" ? `Level ${step.level + 1}: ${step.piece.number}, ${step.piece.piece.ware.name}` : step.text;
