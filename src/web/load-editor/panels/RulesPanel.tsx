import type { Broken } from "../../../loading/checker/broken.ts";
import { NoIcon, Sign } from "../../parts/index.ts";
import type { Editor } from "../use-editor.ts";
import { bySheetNumbers } from "../words/by-sheet-numbers.ts";
import styles from "./Panels.module.css";
import { levelOf, pieceOf } from "./where-broken.ts";

/** Every rule the whole load breaks, each in a sentence; pressing one goes to where it is. */
export function RulesPanel({ editor, onGone }: { readonly editor: Editor; readonly onGone?: () => void }) {
  const { broken, plan } = editor;
  if (broken.length === 0) {
    const isEmpty = plan.levels.every(({ placements }) => placements.length === 0);
    return (
      <div className={styles.panel}>
        <p className={styles.verdict}>
          <Sign kind="keeps">Keeps every rule</Sign>
        </p>
        <p className={styles.soft}>
          {isEmpty
            ? "Nothing stands in it yet."
            : "Every piece has its room: to its neighbours, posts, wall, shelves, lid and probes."}
        </p>
      </div>
    );
  }
  const go = ({ level, places }: Broken): void => {
    const piece = places.find((place) => place.kind === "piece");
    const to = levelOf(level, places);
    if (piece) editor.choose(pieceOf(piece));
    else if (to !== null) editor.goTo(to);
    onGone?.();
  };
  return (
    <div className={styles.panel}>
      <p className={styles.verdict}>
        <Sign kind="breaks">
          {broken.length === 1 ? "One rule is broken" : `Rules are broken in ${broken.length} places`}
        </Sign>
      </p>
      <ul className={styles.list}>
        {broken.map((each) => (
          <li key={`${each.rule} ${each.message}`}>
            <button type="button" className={styles.row} onClick={() => go(each)}>
              <span className={styles.danger}>
                <NoIcon size={20} />
              </span>
              <span>{bySheetNumbers(each.message, editor.drawn)}</span>
            </button>
          </li>
        ))}
      </ul>
    </div>
  );
}
