import { NoIcon } from "../parts/index.ts";
import styles from "./LevelStrip.module.css";
import type { Editor } from "./use-editor.ts";

/** The levels side by side, to be pressed, and to drop a piece on. */
export function LevelStrip({ editor }: { readonly editor: Editor }) {
  const { drawn, level, brokenLevels } = editor;
  return (
    <nav className={styles.strip} aria-label="Levels">
      {drawn.levels.map(({ index, number, pieces }) => (
        <button
          key={index}
          type="button"
          className={styles.level}
          data-drop-level={index}
          aria-current={index === level ? "true" : undefined}
          aria-label={`Level ${number}, ${pieces.length} pieces${brokenLevels.has(index) ? ", a rule is broken" : ""}`}
          onClick={() => editor.goTo(index)}
        >
          <span className={styles.number}>Level {number}</span>
          <span className={styles.count}>{pieces.length}</span>
          {brokenLevels.has(index) && (
            <span className={styles.broken}>
              <NoIcon size={16} />
            </span>
          )}
        </button>
      ))}
    </nav>
  );
}
