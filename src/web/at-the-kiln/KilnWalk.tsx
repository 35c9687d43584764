import { useRef, useState } from "react";
import { listText } from "../../sheets/clock-direction.ts";
import { useAction } from "../actions/registry.ts";
import { BackIcon, Button, DoneIcon, IconButton, OnIcon, Problem, UndoIcon } from "../parts/index.ts";
import { KeptHere } from "../parts/KeptHere.tsx";
import { useToolsBelow } from "../parts/use-tools-below.ts";
import { AllSteps } from "./AllSteps.tsx";
import { ClosingStep } from "./ClosingStep.tsx";
import styles from "./KilnWalk.module.css";
import { StepsIcon } from "./StepsIcon.tsx";
import { StepView } from "./StepView.tsx";
import { useAwake } from "./use-awake.ts";
import { useSwipe } from "./use-swipe.ts";
import { type PlannedLoad, useWalk } from "./use-walk.ts";
import { WalkHead } from "./WalkHead.tsx";
import type { WalkStep } from "./walk.ts";

interface KilnWalkProps {
  readonly record: PlannedLoad;
  readonly back: { readonly href: string; readonly label: string };
}

/** The walk itself: a step, and three large buttons under it. */
export function KilnWalk({ record, back }: KilnWalkProps) {
  const walk = useWalk(record);
  const [lastDone, setLastDone] = useState<readonly WalkStep[]>([]);
  const [isListOpen, setListOpen] = useState(false);
  useAwake();
  const { steps, done, at, progress } = walk;
  const step = steps[at];
  const isDone = step !== undefined && done.has(step.key);

  const goTo = (to: number) => walk.goTo(Math.min(steps.length, Math.max(0, to)));
  const next = () => goTo(at + 1);
  const previous = () => goTo(at - 1);
  const doAndGoOn = (which: readonly WalkStep[]) => {
    walk.setDone(which, true);
    setLastDone(which);
    const last = which.at(-1);
    goTo(last ? steps.indexOf(last) + 1 : at + 1);
  };
  const takeBack = (which: readonly WalkStep[]) => {
    walk.setDone(which, false);
    setLastDone([]);
    const first = which[0];
    if (first) goTo(steps.indexOf(first));
  };
  useAction({ id: "kiln.next", name: "Next step", keys: "right", group: "At the kiln", run: next });
  useAction({ id: "kiln.back", name: "Step before", keys: "left", group: "At the kiln", run: previous });
  useAction({
    id: "kiln.done",
    name: "This is done",
    keys: "d",
    group: "At the kiln",
    run: () => step && doAndGoOn([step]),
    isEnabled: step !== undefined && !isDone,
  });
  const foot = useRef<HTMLElement>(null);
  useToolsBelow(foot);
  const swipe = useSwipe({ left: next, right: previous });

  return (
    <div className={styles.screen} data-whole-window>
      <WalkHead
        title={record.name}
        back={back}
        progress={progress}
        action={<IconButton label="All steps" icon={<StepsIcon />} onPress={() => setListOpen(true)} />}
      />
      <div className={styles.middle}>
        <KeptHere what="Ticks are kept here and go when it answers." />
        <Problem error={walk.problem} />
        {walk.changed && <ChangedPlan levels={walk.changed} onLooked={walk.lookedAtChange} />}
        <section className={styles.step} aria-live="polite" {...swipe}>
          {step ? (
            <StepView walk={walk} step={step} record={record} onLevelIn={doAndGoOn} />
          ) : (
            <ClosingStep walk={walk} onGoTo={goTo} />
          )}
        </section>
        {lastDone.length > 0 && !walk.isClosed && (
          <div className={styles.takeBack}>
            <Button look="quiet" icon={<UndoIcon />} onPress={() => takeBack(lastDone)}>
              {takeBackWords(lastDone)}
            </Button>
          </div>
        )}
      </div>
      <footer ref={foot} className={styles.buttons}>
        <button type="button" className={styles.side} onClick={previous} disabled={at === 0}>
          <BackIcon size={32} />
          <span>Back</span>
        </button>
        {step ? (
          <MainButton step={step} isDone={isDone} onDone={() => doAndGoOn([step])} onNext={next} />
        ) : (
          !walk.isClosed && <LidButton allIn={progress.allIn} onClosed={() => walk.setClosed(true)} />
        )}
        <button type="button" className={styles.side} onClick={next} disabled={at >= steps.length}>
          <OnIcon size={32} />
          <span>Next</span>
        </button>
      </footer>
      <AllSteps
        isOpen={isListOpen}
        walk={walk}
        onClose={() => setListOpen(false)}
        onGoTo={(to) => {
          setListOpen(false);
          goTo(to);
        }}
        onTakeBack={(which) => takeBack([which])}
      />
    </div>
  );
}

function MainButton(props: { step: WalkStep; isDone: boolean; onDone: () => void; onNext: () => void }) {
  const { step, isDone, onDone, onNext } = props;
  const word = step.kind === "piece" ? "It is in" : "Done";
  return isDone ? (
    <button type="button" className={`${styles.main} ${styles.isDone}`} onClick={onNext}>
      <DoneIcon size={36} />
      <span>{step.kind === "piece" ? "In" : "Done"}</span>
    </button>
  ) : (
    <button type="button" className={styles.main} onClick={onDone}>
      <span>{word}</span>
    </button>
  );
}

const LidButton = ({ allIn, onClosed }: { readonly allIn: boolean; readonly onClosed: () => void }) => (
  <button type="button" className={styles.main} disabled={!allIn} onClick={onClosed}>
    <span>{allIn ? "The lid is closed" : "Pieces missing"}</span>
  </button>
);

function takeBackWords(steps: readonly WalkStep[]): string {
  const [first, ...others] = steps;
  if (others.length > 0) return `Take back these ${steps.length} ticks`;
  return first?.kind === "piece"
    ? `Take back: ${first.piece.number}, ${first.piece.piece.ware.name}`
    : "Take back the last tick";
}

function ChangedPlan({ levels, onLooked }: { readonly levels: readonly number[]; readonly onLooked: () => void }) {
  return (
    <aside className={styles.changed} role="alert">
      <p>
        <strong>The plan has changed since you were here: level {listText(levels.map(String))}.</strong> Look at what
        stands there already before you go on.
      </p>
      <Button onPress={onLooked}>I have looked</Button>
    </aside>
  );
}
