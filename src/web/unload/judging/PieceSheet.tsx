import { lazy, Suspense, useState } from "react";
import { becomesOf, mayBecome } from "../../../studio/firings/piece-becomes.ts";
import type { Becomes } from "../../../studio/records/becomes.ts";
import { GRADES, type Grade } from "../../../studio/records/faults.ts";
import type { Outcome } from "../../../studio/records/firing-parts.ts";
import { useSwipe } from "../../at-the-kiln/use-swipe.ts";
import {
  BackIcon,
  Button,
  ChoiceField,
  CloseIcon,
  IconButton,
  OnIcon,
  TextField,
  UndoIcon,
} from "../../parts/index.ts";
import { PhotosOfPiece } from "../photos/PhotosOfPiece.tsx";
import type { Details, Unloading } from "../use-unloading.ts";
import { BECOMES_WORDS, pieceFired } from "./becomes.ts";
import { FaultChoice } from "./FaultChoice.tsx";
import { GRADE_NAMES, gradeSign } from "./grade-signs.tsx";
import styles from "./PieceSheet.module.css";
import type { FiredPiece } from "./pieces.ts";

const CausesDialog = lazy(() => import("../causes/CausesDialog.tsx"));

interface PieceSheetProps {
  readonly unloading: Unloading;
  readonly piece: FiredPiece;
  readonly onGrade: (grade: Grade) => void;
  readonly onStep: (by: 1 | -1) => void;
  /** To the next of this shelf that nobody judged, or back to the shelf. */
  readonly onNext: () => void;
  readonly onClose: () => void;
}

/** How one piece came out: three large buttons under the thumb, and more to say where it did not come out well. */
export function PieceSheet({ unloading, piece, onGrade, onStep, onNext, onClose }: PieceSheetProps) {
  const { judged, firing, judge } = unloading;
  const outcome = judged.get(piece.key);
  const [saysMore, setSaysMore] = useState(false);
  const [showsCauses, setShowsCauses] = useState(false);
  const swipe = useSwipe({ left: () => onStep(1), right: () => onStep(-1) });
  const isOpen = outcome !== undefined && (outcome.grade !== "good" || saysMore || outcome.note !== "");
  const say = (more: Details) => outcome && judge([piece], outcome.grade, { ...outcome, ...more });
  return (
    <section className={styles.sheet} aria-label="How it came out" {...swipe}>
      <header className={styles.head}>
        <IconButton label="Piece before" icon={<BackIcon />} onPress={() => onStep(-1)} />
        <div className={styles.title} aria-live="polite">
          <h2>
            <span className={styles.number}>{piece.number}</span> {piece.name}
          </h2>
          <p>
            {piece.glaze === "" ? "" : `${piece.glaze} · `}shelf {piece.level + 1},{" "}
            {piece.numbered.direction === "the middle" ? "in the middle" : `toward ${piece.numbered.direction}`}
          </p>
        </div>
        <IconButton label="Piece after" icon={<OnIcon />} onPress={() => onStep(1)} />
        <IconButton label="Back to the shelf" icon={<CloseIcon />} onPress={onClose} />
      </header>
      <div className={styles.grades}>
        {GRADES.map((grade) => (
          <button
            key={grade}
            type="button"
            className={`${styles.grade} ${styles[grade]}`}
            aria-pressed={outcome?.grade === grade}
            onClick={() => onGrade(grade)}
          >
            {gradeSign(grade, 34)}
            <span>{GRADE_NAMES[grade]}</span>
          </button>
        ))}
      </div>
      {outcome && !isOpen && (
        <div className={styles.row}>
          <Button look="quiet" onPress={() => setSaysMore(true)}>
            A photo, a note, what it becomes
          </Button>
        </div>
      )}
      {outcome && isOpen && (
        <div className={styles.more} key={piece.key}>
          {outcome.grade !== "good" && (
            <FaultChoice kind={firing.programme?.kind} faults={outcome.faults} onChange={(faults) => say({ faults })} />
          )}
          <PhotosOfPiece firingId={firing.id} piece={piece} />
          <NoteField note={outcome.note} onNote={(note) => say({ note })} />
          <BecomesField
            unloading={unloading}
            piece={piece}
            outcome={outcome}
            onChange={(becomes) => say({ becomes })}
          />
        </div>
      )}
      {outcome && (
        <div className={styles.row}>
          <Button look="quiet" icon={<UndoIcon />} onPress={() => judge([piece], null)}>
            Take back: {GRADE_NAMES[outcome.grade].toLowerCase()}
          </Button>
        </div>
      )}
      {outcome && isOpen && (
        <div className={styles.foot}>
          {outcome.faults.length > 0 && <Button onPress={() => setShowsCauses(true)}>What may have caused it</Button>}
          <Button look="main" icon={<OnIcon />} onPress={onNext}>
            Next
          </Button>
        </div>
      )}
      {showsCauses && outcome && (
        <Suspense fallback={null}>
          <CausesDialog
            unloading={unloading}
            piece={piece}
            faults={outcome.faults}
            onClose={() => setShowsCauses(false)}
          />
        </Suspense>
      )}
    </section>
  );
}

function NoteField({ note, onNote }: { readonly note: string; readonly onNote: (note: string) => void }) {
  const [typed, setTyped] = useState<string | null>(null);
  const keep = () => {
    if (typed !== null && typed.trim() !== note) onNote(typed.trim());
    setTyped(null);
  };
  return <TextField label="Note" value={typed ?? note} maxLength={2000} isLong onChange={setTyped} onBlur={keep} />;
}

interface BecomesFieldProps {
  readonly unloading: Unloading;
  readonly piece: FiredPiece;
  readonly outcome: Outcome;
  readonly onChange: (becomes: Becomes) => void;
}

function BecomesField({ unloading, piece, outcome, onChange }: BecomesFieldProps) {
  const { firing, record } = unloading;
  // Once the load is unpacked its pieces have moved on; what was lost has nothing to become.
  if (record.state === "unpacked" || piece.batch === null) return null;
  const fired = pieceFired(outcome.grade, piece.batch, firing.programme?.kind);
  return (
    <ChoiceField
      label="What it becomes"
      look="row"
      options={mayBecome(fired).map((id) => ({ id, label: BECOMES_WORDS[id] }))}
      value={becomesOf(outcome.becomes, fired)}
      onChange={onChange}
    />
  );
}
