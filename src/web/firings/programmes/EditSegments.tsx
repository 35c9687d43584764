import { useMemo, useState } from "react";
import { checkProgramme } from "../../../firing/programme/check-programme.ts";
import { programmeHours } from "../../../firing/programme/ideal-curve.ts";
import type { Programme } from "../../../firing/programme/programme.ts";
import { BadInput } from "../../../measures/bad-input.ts";
import {
  AddIcon,
  BinIcon,
  Button,
  Checkbox,
  ChoiceField,
  Dialog,
  DownIcon,
  IconButton,
  NumberField,
  TextField,
  tell,
  UpIcon,
  wordsOf,
} from "../../parts/index.ts";
import { newId, useCommand, useSettings } from "../../studio/hooks.ts";
import { CONE_CHOICES } from "../prepare/usual-wish.ts";
import { hoursLong } from "../words/figures.ts";
import { Findings } from "./Findings.tsx";
import { KIND_CHOICES } from "./kind-choices.ts";
import styles from "./Programmes.module.css";
import {
  changedSegment,
  draftOfProgramme,
  movedSegment,
  type ProgrammeDraft,
  programmeOfDraft,
  type SegmentDraft,
  shownDegrees,
  typedDegrees,
  withOneMore,
} from "./segment-draft.ts";

interface EditSegmentsProps {
  readonly programme: Programme;
  readonly title?: string;
  /** On the button: "Use it for this firing". */
  readonly keepWords: string;
  /** Offers to put it among her own programmes too. */
  readonly mayKeepAsOwn?: boolean;
  readonly onKeep: (programme: Programme) => void;
  readonly onClose: () => void;
}

const NO_CONE = { id: "", label: "none" };
const NO_KIND = { id: "", label: "Anything" };

/** A programme as a table of rates, targets and holds, checked at every edit. */
export default function EditSegments(props: EditSegmentsProps) {
  const { temperatureUnits: units } = useSettings();
  const command = useCommand();
  const [draft, setDraft] = useState(() => draftOfProgramme(props.programme));
  const [isOwn, setOwn] = useState(false);
  const read = useMemo(() => readDraft(draft), [draft]);
  const findings = useMemo(() => read.programme && checkProgramme(read.programme).findings, [read]);
  const at = (path: string) => (read.problem?.path === path ? `Here should be ${read.problem.expected}.` : null);
  const keep = () => {
    if (!read.programme) return;
    if (isOwn) {
      command("add-programme", { id: newId(), programme: read.programme }).catch((error) => tell(wordsOf(error)));
    }
    props.onKeep(read.programme);
    props.onClose();
  };
  return (
    <Dialog
      title={props.title ?? "Change the programme"}
      isOpen
      isWide
      staysOpen
      onClose={props.onClose}
      actions={
        <Button look="main" isDisabled={read.programme === null} onPress={keep}>
          {props.keepWords}
        </Button>
      }
    >
      <div className={styles.editor}>
        <div className={styles.row}>
          <TextField
            label="Name"
            value={draft.name}
            maxLength={120}
            problem={at("name")}
            onChange={(name) => setDraft({ ...draft, name })}
          />
          <ChoiceField
            label="For"
            options={[NO_KIND, ...KIND_CHOICES]}
            value={draft.kind ?? ""}
            onChange={(kind) => setDraft({ ...draft, kind: kind === "" ? undefined : (kind as Programme["kind"]) })}
          />
          <ChoiceField
            label="To reach"
            options={[NO_CONE, ...CONE_CHOICES]}
            value={draft.cone ?? ""}
            onChange={(cone) => setDraft({ ...draft, cone: cone === "" ? undefined : cone })}
          />
        </div>
        <ol className={styles.segments}>
          {draft.segments.map((segment, i) => (
            <SegmentFields
              key={segment.key}
              segment={segment}
              number={i + 1}
              count={draft.segments.length}
              units={units}
              problemAt={(field) => at(`segments[${i}].${field}`)}
              onChange={(change) => setDraft(changedSegment(draft, i, change))}
              onMove={(by) => setDraft(movedSegment(draft, i, by))}
              onRemove={() => setDraft({ ...draft, segments: draft.segments.filter((_, n) => n !== i) })}
            />
          ))}
        </ol>
        <div>
          <Button icon={<AddIcon />} onPress={() => setDraft(withOneMore(draft))}>
            Add a segment
          </Button>
        </div>
        <div aria-live="polite">
          {read.programme && (
            <p className={styles.soft}>
              {hoursLong(programmeHours(read.programme).heating)} up, in a kiln that follows.
            </p>
          )}
          {findings && <Findings findings={findings} />}
        </div>
        {props.mayKeepAsOwn && (
          <Checkbox isSelected={isOwn} onChange={setOwn}>
            Keep it among my own programmes too
          </Checkbox>
        )}
      </div>
    </Dialog>
  );
}

interface SegmentFieldsProps {
  readonly segment: SegmentDraft;
  readonly number: number;
  readonly count: number;
  readonly units: "C" | "F";
  readonly problemAt: (field: string) => string | null;
  readonly onChange: (change: Partial<Pick<SegmentDraft, "rateCPerHour" | "targetC" | "holdMin">>) => void;
  readonly onMove: (by: 1 | -1) => void;
  readonly onRemove: () => void;
}

function SegmentFields({ segment, number, count, units, problemAt, onChange, onMove, onRemove }: SegmentFieldsProps) {
  const heard = (words: string) => `${words} segment ${number}`;
  return (
    <li className={styles.segment}>
      <span className={styles.number} aria-hidden="true">
        {number}
      </span>
      <NumberField
        label={`Rate, °${units}/h`}
        isFraction
        min={0}
        max={3600}
        value={shownDegrees(segment.rateCPerHour, units, "rate")}
        problem={problemAt("rateCPerHour")}
        onChange={(rate) => onChange({ rateCPerHour: typedDegrees(rate, units, "rate") })}
      />
      <NumberField
        label={`To, °${units}`}
        isFraction
        min={0}
        max={units === "F" ? 2642 : 1450}
        value={shownDegrees(segment.targetC, units, "target")}
        problem={problemAt("targetC")}
        onChange={(target) => onChange({ targetC: typedDegrees(target, units, "target") })}
      />
      <NumberField
        label="Hold, min"
        min={0}
        max={6000}
        value={segment.holdMin}
        problem={problemAt("holdMin")}
        onChange={(hold) => onChange({ holdMin: hold ?? 0 })}
      />
      <div className={styles.segmentButtons}>
        <IconButton label={heard("Earlier:")} icon={<UpIcon />} isDisabled={number === 1} onPress={() => onMove(-1)} />
        <IconButton
          label={heard("Later:")}
          icon={<DownIcon />}
          isDisabled={number === count}
          onPress={() => onMove(1)}
        />
        <IconButton label={heard("Remove")} icon={<BinIcon />} isDisabled={count === 1} onPress={onRemove} />
      </div>
      <p className={styles.segmentWhy}>
        {[segment.rateCPerHour === null ? "As fast as the kiln goes" : "", segment.stage ?? "", segment.reason ?? ""]
          .filter(Boolean)
          .join(". ")}
      </p>
    </li>
  );
}

function readDraft(draft: ProgrammeDraft): { readonly programme: Programme | null; readonly problem: BadInput | null } {
  try {
    return { programme: programmeOfDraft(draft), problem: null };
  } catch (error) {
    if (!(error instanceof BadInput)) throw error;
    return { programme: null, problem: error };
  }
}
