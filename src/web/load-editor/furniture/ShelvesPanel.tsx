import { removeLevel } from "../../../loading/editing/edit-levels.ts";
import { BinIcon, Button, LengthText } from "../../parts/index.ts";
import { useSettings } from "../../studio/hooks.ts";
import { piecesWords } from "../words/place-words.ts";
import { AddLevel } from "./AddLevel.tsx";
import { postsWords } from "./furniture-words.ts";
import { LevelFields } from "./LevelFields.tsx";
import styles from "./Shelves.module.css";
import type { ShelvesPanelProps } from "./shelves-props.ts";

/** Shelves and posts by hand: the levels as they lie in the kiln, the highest on top; the chosen one can be changed. */
export function ShelvesPanel({ request, plan, level: chosen, onLevel, onEdit }: ShelvesPanelProps) {
  const { lengthUnits } = useSettings();
  const levels = plan.levels.map((level, index) => ({ level, index })).reverse();
  return (
    <div className={styles.panel}>
      <AddLevel request={request} plan={plan} level={chosen} onLevel={onLevel} onEdit={onEdit} />
      <ol className={styles.levels} reversed>
        {levels.map(({ level, index }) => (
          <li key={index} className={index === chosen ? styles.chosen : undefined}>
            <button
              type="button"
              className={styles.level}
              aria-pressed={index === chosen}
              onClick={() => onLevel(index)}
            >
              <span className={styles.number}>{index + 1}</span>
              <span className={styles.words}>
                <span>
                  {level.shelf}, <LengthText mm={level.topMm} /> up
                </span>
                <span className={styles.soft}>
                  {postsWords(level, lengthUnits)}; {piecesWords(level.placements.length)}
                </span>
              </span>
            </button>
            {index === chosen && (
              <div className={styles.fields}>
                <LevelFields request={request} plan={plan} level={index} onEdit={onEdit} />
                <Button
                  look="danger"
                  icon={<BinIcon />}
                  onPress={() => {
                    onEdit(removeLevel(request, plan, index), `took out level ${index + 1}`);
                    onLevel(Math.max(0, index - 1));
                  }}
                >
                  Take out this level
                </Button>
                {level.placements.length > 0 && (
                  <p className={styles.soft}>What stands on it waits again; what stands above comes down.</p>
                )}
              </div>
            )}
          </li>
        ))}
      </ol>
    </div>
  );
}
