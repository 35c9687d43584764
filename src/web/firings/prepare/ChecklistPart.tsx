import { useId } from "react";
import { CHECKLIST } from "../../../studio/firings/checklist.ts";
import type { FiringRecord } from "../../../studio/records/firing-record.ts";
import { Checkbox } from "../../parts/index.ts";
import { useFiringCommands } from "../use-firing-commands.ts";
import styles from "./Preparing.module.css";

const BY_ITEM = new Map(CHECKLIST.map((each) => [each.item, each]));

/** What she sees to before the switch, in the order of the work; kept with the firing. */
export function ChecklistPart({ firing }: { readonly firing: FiringRecord }) {
  const { tick } = useFiringCommands();
  const id = useId();
  const list = firing.checklist ?? [];
  const done = list.filter(({ at }) => at !== null).length;
  return (
    <section className={styles.part} aria-labelledby={id}>
      <div className={styles.head}>
        <h2 id={id}>Before the switch</h2>
        <span className={styles.soft} aria-live="polite">
          {done} of {list.length}
        </span>
      </div>
      <div className={styles.bar} aria-hidden="true">
        <span style={{ width: `${list.length === 0 ? 0 : (100 * done) / list.length}%` }} />
      </div>
      <ul className={styles.checks}>
        {list.map(({ item, at }) => {
          const known = BY_ITEM.get(item);
          return (
            <li key={item}>
              <Checkbox
                isSelected={at !== null}
                hint={known?.why}
                onChange={(isSelected) => tick(firing, item, isSelected ? new Date().toISOString() : null)}
              >
                {known?.text ?? item}
              </Checkbox>
              {known?.caution !== undefined && at === null && <p className={styles.mind}>{known.caution}</p>}
            </li>
          );
        })}
      </ul>
    </section>
  );
}
