import { NoIcon } from "../parts/index.ts";
import type { Over } from "./dragging/use-hand.ts";
import styles from "./LevelStrip.module.css";
import type { Editor } from "./use-editor.ts";
import { piecesWords } from "./words/place-words.ts";

/** The levels side by side, to be pressed, and to drop a piece on. */
export function LevelStrip({ editor, over }: { readonly editor: Editor; readonly over: Over }) {
  const { drawn, level, brokenLevels } = editor;
  return (
    <nav className={styles.strip} aria-label="Levels">
      {drawn.levels.map(({ index, number, pieces }) => (
        <button
          key={index}
          type="button"
          className={styles.level}
          data-drop-level={index}
          data-over={typeof over === "object" && over?.level === index ? "" : undefined}
          aria-current={index === level ? "true" : undefined}
          onClick={() => editor.goTo(index)}
        >
          <span>Level {number}</span>
          <span className={styles.count}>
            {brokenLevels.has(index) && (
              <span className={styles.broken}>
                <NoIcon size={16} />
                <span className="heard">A rule is broken. </span>
              </span>
            )}
            {piecesWords(pieces.length)}
          </span>
        </button>
      ))}
    </nav>
  );
}
