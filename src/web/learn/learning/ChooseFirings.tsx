import { useState } from "react";
import type { FiringRecord } from "../../../studio/records/firing-record.ts";
import { dayClockWords } from "../../firings/words/clock-words.ts";
import { Button, Checkbox, Dialog, Problem } from "../../parts/index.ts";
import type { ToLearnFrom } from "./firings-to-learn-from.ts";
import { useLearn } from "./use-learn.ts";

interface ChooseFiringsProps {
  readonly kilnId: string;
  readonly from: ToLearnFrom;
  readonly onClose: () => void;
}

/** The firings to learn from together: one whose cones were read wrongly can be learned from again, or left out. */
export default function ChooseFirings({ kilnId, from, onClose }: ChooseFiringsProps) {
  const all = [...from.fresh, ...from.learned].sort((a, b) => ((a.startedAt ?? "") < (b.startedAt ?? "") ? 1 : -1));
  const [chosen, setChosen] = useState<ReadonlySet<string>>(() => new Set(from.fresh.map(({ id }) => id)));
  const { isBusy, error, learn } = useLearn(kilnId);
  const known = new Set(from.learned.map(({ id }) => id));
  const toggle = (firing: FiringRecord, isIn: boolean) => {
    const next = new Set(chosen);
    if (isIn) next.add(firing.id);
    else next.delete(firing.id);
    setChosen(next);
  };
  const go = async () => {
    if (await learn(all.filter(({ id }) => chosen.has(id)))) onClose();
  };
  return (
    <Dialog
      title="Learn from several firings"
      isOpen
      onClose={onClose}
      actions={
        <Button look="main" isBusy={isBusy} isDisabled={chosen.size === 0} onPress={() => void go()}>
          Learn from {chosen.size === 1 ? "1 firing" : `${chosen.size} firings`}
        </Button>
      }
    >
      <p>
        None is counted twice: what was learned from a chosen firing before is set aside, with all that came after. It
        takes about a second for each.
      </p>
      {all.map((firing) => (
        <Checkbox
          key={firing.id}
          isSelected={chosen.has(firing.id)}
          onChange={(isIn) => toggle(firing, isIn)}
          hint={known.has(firing.id) ? "Learned from already" : undefined}
        >
          {firing.name}, {dayClockWords(firing.startedAt ?? "")}
        </Checkbox>
      ))}
      <Problem error={error} />
    </Dialog>
  );
}
