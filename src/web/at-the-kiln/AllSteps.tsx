import { Dialog, DoneIcon, IconButton, UndoIcon } from "../parts/index.ts";
import styles from "./AllSteps.module.css";
import type { Walk } from "./use-walk.ts";
import type { WalkStep } from "./walk.ts";

interface AllStepsProps {
  readonly isOpen: boolean;
  readonly walk: Walk;
  readonly onClose: () => void;
  readonly onGoTo: (at: number) => void;
  readonly onTakeBack: (step: WalkStep) => void;
}

/** Every step in order, those done ticked; a press goes there. */
export function AllSteps({ isOpen, walk, onClose, onGoTo, onTakeBack }: AllStepsProps) {
  const { steps, done, at } = walk;
  const stages = [...new Set(steps.map(({ stage }) => stage))];
  return (
    <Dialog title="All steps" isOpen={isOpen} onClose={onClose}>
      {stages.map((stage) => (
        <section key={stage}>
          <h3>{stage}</h3>
          <ol className={styles.steps}>
            {steps.map(
              (step, i) =>
                step.stage === stage && (
                  <li key={step.key} className={styles.step}>
                    <button
                      type="button"
                      className={styles.go}
                      aria-current={i === at ? "step" : undefined}
                      onClick={() => onGoTo(i)}
                    >
                      <span className={styles.box}>{done.has(step.key) && <DoneIcon size={20} />}</span>
                      <span>
                        {done.has(step.key) && <span className="heard">Done: </span>}
                        {step.kind === "piece" ? `${step.piece.number}  ${step.piece.piece.ware.name}` : step.text}
                      </span>
                    </button>
                    {done.has(step.key) && (
                      <IconButton label="Take this tick back" icon={<UndoIcon />} onPress={() => onTakeBack(step)} />
                    )}
                  </li>
                ),
            )}
          </ol>
        </section>
      ))}
    </Dialog>
  );
}
