import { useState } from "react";
import type { FiringRecord } from "../../../studio/records/firing-record.ts";
import { MomentField } from "../../firings/start/MomentField.tsx";
import { Button, Dialog, Sign } from "../../parts/index.ts";
import styles from "../Watch.module.css";
import { type Course, useCourse } from "./use-course.ts";

interface Step {
  readonly title: string;
  readonly words: string;
  readonly does: keyof Pick<Course, "shutOff" | "end" | "breakOff">;
  readonly yes: string;
  readonly caution?: string;
}

const SHUT_OFF: Step = {
  title: "It is shut off",
  words: "The elements are off for good and it cools. This only writes it down; see at the kiln that it is so.",
  does: "shutOff",
  yes: "Yes, it is off",
};
const OPENED: Step = {
  title: "It is opened",
  words: "The lid is lifted: the firing is over, and unloading comes next.",
  does: "end",
  yes: "Yes, it is opened",
};
const BROKEN_OFF: Step = {
  title: "Broken off",
  words: "It ended before its programme did. Its load stays as it is.",
  does: "breakOff",
  yes: "Yes, broken off",
  caution: "Wareboard cannot switch it off. See at the kiln that it is off, at its isolator where its manual says so.",
};

interface CourseButtonsProps {
  readonly firing: FiringRecord;
  /** True once its programme is over: then the next thing to tell stands out. */
  readonly isOver: boolean;
  /** Now by the studio's clock. */
  readonly now: () => string;
}

/** What she tells of it: shut off, opened, broken off. */
export function CourseButtons({ firing, isOver, now }: CourseButtonsProps) {
  const [asked, setAsked] = useState<Step | null>(null);
  if (firing.state !== "firing" && firing.state !== "cooling") return null;
  const next = firing.state === "firing" ? SHUT_OFF : OPENED;
  return (
    <div className={styles.buttons}>
      <Button look={firing.state === "firing" && !isOver ? "plain" : "main"} onPress={() => setAsked(next)}>
        {next.title}
      </Button>
      <Button look="quiet" onPress={() => setAsked(BROKEN_OFF)}>
        Broken off
      </Button>
      {asked !== null && <Asked firing={firing} step={asked} now={now} onClose={() => setAsked(null)} />}
    </div>
  );
}

interface AskedProps extends Omit<CourseButtonsProps, "isOver"> {
  readonly step: Step;
  readonly onClose: () => void;
}

function Asked({ firing, step, now, onClose }: AskedProps) {
  const course = useCourse();
  const [latest] = useState(now);
  const [at, setAt] = useState<string | null>(latest);
  const [isBusy, setBusy] = useState(false);
  const isAhead = at !== null && at > latest && Date.parse(at) > Date.parse(now()) + 60_000;
  const isBefore = at !== null && firing.startedAt !== null && at < firing.startedAt;
  const problem = isAhead ? "That is still to come." : isBefore ? "That is before it was started." : null;
  const go = async () => {
    setBusy(true);
    if (await course[step.does](firing, at ?? latest)) onClose();
    else setBusy(false);
  };
  return (
    <Dialog
      title={step.title}
      isOpen
      onClose={onClose}
      actions={
        <>
          <Button onPress={onClose}>Not yet</Button>
          <Button look="main" isBusy={isBusy} isDisabled={at === null || problem !== null} onPress={() => void go()}>
            {step.yes}
          </Button>
        </>
      }
    >
      <div className={styles.column}>
        <p>{step.words}</p>
        {step.caution !== undefined && <Sign kind="mind">{step.caution}</Sign>}
        <MomentField label="When" value={at} max={latest} problem={problem} onChange={setAt} />
      </div>
    </Dialog>
  );
}
