import { CAUTIONS_FIRST } from "../../sheets/cautions.ts";
import { Button, CautionNote } from "../parts/index.ts";
import { useSettings } from "../studio/hooks.ts";
import styles from "./KilnWalk.module.css";
import { LevelPicture } from "./LevelPicture.tsx";
import { layOut } from "./lay-out.ts";
import { PiecePhoto } from "./PiecePhoto.tsx";
import { SidePicture } from "./SidePicture.tsx";
import type { PlannedLoad, Walk } from "./use-walk.ts";
import { type DoStep, type PieceStep, pieceWords, type WalkStep } from "./walk.ts";

interface StepViewProps {
  readonly walk: Walk;
  readonly step: WalkStep;
  readonly record: PlannedLoad;
  /** Several pieces at once: all that is left of a level. */
  readonly onLevelIn: (pieces: readonly WalkStep[]) => void;
}

/** One step, to be read at arm's length with clay on one's hands. */
export function StepView({ walk, step, record, onLevelIn }: StepViewProps) {
  return step.kind === "piece" ? (
    <PieceView walk={walk} step={step} record={record} onLevelIn={onLevelIn} />
  ) : (
    <DoView walk={walk} step={step} />
  );
}

function PieceView({ walk, step, record, onLevelIn }: StepViewProps & { readonly step: PieceStep }) {
  const { lengthUnits } = useSettings();
  const level = walk.load.levels.find(({ index }) => index === step.level);
  const { number, piece } = step.piece;
  const open = walk.steps.filter(
    (each) => each.kind === "piece" && each.level === step.level && !walk.done.has(each.key),
  );
  const words = pieceWords(step.piece, lengthUnits);
  const wareId = record.sources.find(({ ware }) => ware === piece.ware.name)?.wareId;
  return (
    <>
      <p className={styles.stage}>{step.stage}</p>
      {level && (
        <div className={styles.picture}>
          <LevelPicture
            load={walk.load}
            level={level}
            marked={step.key}
            done={walk.done}
            label={`${piece.ware.name}, piece ${number} of ${step.of}: ${words.join(", ")}`}
          />
        </div>
      )}
      <div className={styles.piece}>
        <span className={styles.number}>
          {number}
          <small>of {step.of}</small>
        </span>
        <div>
          <h2 className={styles.name}>{piece.ware.name}</h2>
          {words.map((line) => (
            <p key={line} className={styles.line}>
              {line}
            </p>
          ))}
          {piece.ware.glaze && <p className={styles.note}>{piece.ware.glaze}</p>}
        </div>
        {wareId !== undefined && <PiecePhoto wareId={wareId} name={piece.ware.name} />}
      </div>
      {open.length > 1 && (
        <div>
          <Button onPress={() => onLevelIn(open)}>All {open.length} left on this level are in</Button>
        </div>
      )}
    </>
  );
}

function DoView({ walk, step }: { readonly walk: Walk; readonly step: DoStep }) {
  const level = walk.load.levels.find(({ index }) => index === step.level) ?? null;
  return (
    <>
      <p className={styles.stage}>{step.stage}</p>
      {step.sets && (
        <div className={step.sets === "shelf" ? styles.pictures : styles.picture}>
          <LevelPicture load={walk.load} level={level} marked={step.sets} done={walk.done} label={step.text} />
          {step.sets === "shelf" && step.level !== null && <SidePicture load={walk.load} level={step.level} />}
        </div>
      )}
      <h2 className={styles.text}>{step.text}</h2>
      {step.note && <p className={styles.line}>{step.note}</p>}
      {step.counts && <Counts walk={walk} />}
      {walk.at === 0 && <CautionNote title="First">{CAUTIONS_FIRST}</CautionNote>}
    </>
  );
}

function Counts({ walk }: { readonly walk: Walk }) {
  const { lengthUnits } = useSettings();
  const { shelves, posts, ware } = layOut(walk.load, lengthUnits);
  const groups = [
    ["Shelves", shelves],
    ["Posts", posts],
    ["Ware", ware],
  ] as const;
  return (
    <dl className={styles.counts}>
      {groups.map(([title, lines]) => (
        <div key={title}>
          <dt>{title}</dt>
          {lines.map((line) => (
            <dd key={line}>{line}</dd>
          ))}
        </div>
      ))}
    </dl>
  );
}
