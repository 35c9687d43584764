import { Fragment, useMemo } from "react";
import { sceneOf } from "../../../loading/checker/scene.ts";
import type { LoadPlan } from "../../../loading/load-plan.ts";
import type { LoadRecord } from "../../../studio/records/load-record.ts";
import { Button, LengthText, Problem, Spinner } from "../../parts/index.ts";
import { pieces } from "../../waiting/words/ware-words.ts";
import { usePlanning } from "../use-planning.ts";
import { wholeLoad } from "../whole-load.ts";
import styles from "./Compare.module.css";
import { differenceInWords } from "./differences.ts";
import { type WayFigures, wayFigures } from "./figures.ts";
import { SmallLevel } from "./SmallLevel.tsx";

interface WayColumnProps {
  readonly load: LoadRecord;
  /** The way that the others are told beside. */
  readonly first: LoadRecord;
  /** How many levels the way with the most has, so that levels stand in one line. */
  readonly levels: number;
  readonly worthOf: ReadonlyMap<string, number>;
  readonly onKeep: (() => void) | undefined;
}

/** One way: its figures, what differs, each level from the top down. */
export function WayColumn({ load, first, levels, worthOf, onKeep }: WayColumnProps) {
  const planning = usePlanning(load.id);
  const { request, plan: kept } = wholeLoad(load);
  const plan: LoadPlan | null = planning.livePlan ?? kept;
  const firstPlan = wholeLoad(first).plan;
  const scene = useMemo(() => plan && sceneOf(request, plan), [request, plan]);
  const figures = plan && wayFigures(request, plan, worthOf);
  return (
    <article className={styles.way} aria-label={load.name}>
      <header className={styles.head}>
        <h2>{load.name}</h2>
        {planning.running && (
          <p className={styles.busy} aria-live="polite">
            <Spinner isSmall /> Being planned{planning.pieces > 0 && `: ${pieces(planning.pieces)} so far`}
          </p>
        )}
        {planning.problem && (
          <Problem
            error={planning.problem}
            action={planning.canKeep && <Button onPress={() => void planning.keepAnyway()}>Keep it</Button>}
          />
        )}
      </header>
      <div className={styles.differs}>
        {plan && firstPlan && load.id !== first.id && <p>{differenceInWords(plan, firstPlan)}</p>}
        {load.id === first.id && <p className={styles.soft}>The first way.</p>}
        {!plan && !planning.running && <Button onPress={() => planning.plan("nothing")}>Plan it</Button>}
      </div>
      <dl className={styles.figures}>
        {figures && (
          <>
            <Figure name="Pieces">
              {figures.placed} of {figures.waiting}
            </Figure>
            <Figure name="Worth">{Math.round(figures.worth * 10) / 10}</Figure>
            <Figure name="Tallest">{figures.tallestMm === null ? "–" : <LengthText mm={figures.tallestMm} />}</Figure>
            <Figure name="Left out">
              {figures.leftOut.length === 0 ? "nothing" : <LeftOut left={figures.leftOut} />}
            </Figure>
          </>
        )}
      </dl>
      {Array.from({ length: levels }, (_, i) => levels - 1 - i).map((level) => {
        const here = plan?.levels[level];
        return (
          <Fragment key={level}>
            {scene && here ? (
              <figure className={styles.level}>
                <figcaption>
                  Level {level + 1}: {pieces(here.placements.length)}
                  {figures && `, ${Math.round((figures.fillByLevel[level] ?? 0) * 100)} % of the shelf`}
                </figcaption>
                <SmallLevel scene={scene} level={level} label={`Level ${level + 1} from above`} />
              </figure>
            ) : (
              <div className={styles.noLevel}>{plan ? `No level ${level + 1}` : ""}</div>
            )}
          </Fragment>
        );
      })}
      <footer className={styles.foot}>
        <Button href={`/loads/${load.id}`}>Open</Button>
        {onKeep && (
          <Button look="main" label={`Keep this one: ${load.name}`} onPress={onKeep} isDisabled={!plan}>
            Keep this one
          </Button>
        )}
      </footer>
    </article>
  );
}

/** How many stay out; which, when pressed. */
function LeftOut({ left }: { left: WayFigures["leftOut"] }) {
  return (
    <details className={styles.left}>
      <summary>{pieces(left.reduce((sum, { count }) => sum + count, 0))}</summary>
      <ul>
        {left.map(({ ware, count }) => (
          <li key={ware}>
            {count} × {ware}
          </li>
        ))}
      </ul>
    </details>
  );
}

const Figure = ({ name, children }: { name: string; children: React.ReactNode }) => (
  <div>
    <dt>{name}</dt>
    <dd>{children}</dd>
  </div>
);
