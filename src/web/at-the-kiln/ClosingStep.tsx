import { CAUTIONS, CAUTIONS_FIRST } from "../../sheets/cautions.ts";
import { Button, CautionNote, Sign } from "../parts/index.ts";
import { useConnection, useSettings } from "../studio/hooks.ts";
import styles from "./KilnWalk.module.css";
import type { Progress } from "./ticks.ts";
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
  const missing = open.filter(({ kind }) => kind === "piece");
  const notTicked = open.filter(({ kind }) => kind === "do");
  if (isClosed) {
    return (
      <>
        <h2 className={styles.text}>The load is in: {progress.piecesIn} pieces.</h2>
        <Sign kind="keeps">
          {connection === "here" ? "Marked as loaded" : "Marked on this device; the studio will know when it answers"}
        </Sign>
        <div>
          <Button onPress={() => walk.setClosed(false)}>The lid is open again</Button>
        </div>
      </>
    );
  }
  return (
    <>
      <h2 className={styles.text}>{closingWords(progress, open.length)}</h2>
      {missing.length > 0 && <OpenSteps walk={walk} open={missing} onGoTo={onGoTo} />}
      {notTicked.length > 0 && (
        <details className={styles.caution} open={missing.length === 0}>
          <summary>
            {notTicked.length === 1 ? "One step is not ticked" : `${notTicked.length} steps are not ticked`}
          </summary>
          <OpenSteps walk={walk} open={notTicked} onGoTo={onGoTo} />
        </details>
      )}
      {progress.allIn && (
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
    </>
  );
}

function OpenSteps(props: ClosingStepProps & { readonly open: readonly WalkStep[] }) {
  return (
    <ul className={styles.open}>
      {props.open.map((step) => (
        <li key={step.key}>
          <button
            type="button"
            className={styles.openStep}
            onClick={() => props.onGoTo(props.walk.steps.indexOf(step))}
          >
            {openWords(step)}
          </button>
        </li>
      ))}
    </ul>
  );
}

const closingWords = ({ allIn, piecesIn, pieces }: Progress, open: number): string => {
  if (!allIn) return pieces - piecesIn === 1 ? "One piece is not in yet" : `${pieces - piecesIn} pieces are not in yet`;
  return open === 0 ? "Close the lid" : "All pieces are in. Look over what is not ticked, then close the lid.";
};

const openWords = (step: WalkStep): string =>
  step.kind === "piece" ? `Level ${step.level + 1}: ${step.piece.number}, ${step.piece.piece.ware.name}` : step.text;
