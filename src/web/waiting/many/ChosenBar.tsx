import { BinIcon, Button, CloseIcon, CopyIcon, DoneIcon, EditIcon, IconButton, Menu } from "../../parts/index.ts";
import { NEXT_STAGE_WORDS, NEXT_STAGES, type NextStage } from "../batch/next-stage.ts";
import { batches, pieces } from "../words/ware-words.ts";
import styles from "./ChosenBar.module.css";

export interface ChosenBarProps {
  readonly batchCount: number;
  readonly pieceCount: number;
  /** How many of them the filter hides. */
  readonly hiddenCount: number;
  readonly onPlan: () => void;
  readonly onChange: () => void;
  readonly onReached: (stage: NextStage) => void;
  readonly onDuplicate: () => void;
  readonly onRemove: () => void;
  readonly onClear: () => void;
}

/** What can be done with the batches chosen, within reach of the thumb. */
export function ChosenBar(props: ChosenBarProps) {
  const { batchCount, pieceCount, hiddenCount } = props;
  const items = [
    { id: "change", label: "Change them all", icon: <EditIcon />, onPress: props.onChange },
    ...NEXT_STAGES.map((stage) => ({
      id: stage,
      label: `${NEXT_STAGE_WORDS[stage].press} now`,
      icon: <DoneIcon />,
      onPress: () => props.onReached(stage),
    })),
    { id: "copy", label: "Duplicate", icon: <CopyIcon />, onPress: props.onDuplicate },
    { id: "remove", label: "Remove", icon: <BinIcon />, onPress: props.onRemove, isDanger: true },
  ];
  return (
    <section className={styles.bar} aria-label="What is chosen">
      <div className={styles.words}>
        <IconButton label="Choose nothing" icon={<CloseIcon />} onPress={props.onClear} />
        <span role="status">
          <strong>{pieces(pieceCount)}</strong> in {batches(batchCount)}
          {hiddenCount > 0 && <span className={styles.hidden}>, {hiddenCount} not shown</span>}
        </span>
      </div>
      <div className={styles.actions}>
        <Menu label="More with what is chosen" look="plain" items={items}>
          More
        </Menu>
        <Button look="main" onPress={props.onPlan}>
          Plan a load of these
        </Button>
      </div>
    </section>
  );
}
