import { MindIcon } from "../../parts/icons.tsx";
import { batches, coneWords, FIRING_WORDS, pieces } from "../words/ware-words.ts";
import styles from "./FiringCards.module.css";
import type { FiringGroup } from "./firing-groups.ts";

export interface FiringCardsProps {
  readonly groups: readonly FiringGroup[];
  /** Whether the list shows just this group now. */
  readonly isShown: (group: FiringGroup) => boolean;
  readonly onChoose: (group: FiringGroup) => void;
}

/** What can share a firing, as cards: one press shows and chooses all of it. */
export function FiringCards({ groups, isShown, onChoose }: FiringCardsProps) {
  return (
    <section aria-label="What can share a firing">
      <ul className={styles.cards}>
        {groups.map((group) => (
          <li key={`${group.kind}/${group.cone}`}>
            <button type="button" className={styles.card} aria-pressed={isShown(group)} onClick={() => onChoose(group)}>
              <strong>{groupWords(group)}</strong>
              <span>
                {pieces(group.pieces)} in {batches(group.ids.length)}
              </span>
              <Pressing group={group} />
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}

/** "Glaze, cone 6". */
export const groupWords = ({ kind, cone }: Pick<FiringGroup, "kind" | "cone">): string =>
  `${kind ? FIRING_WORDS[kind] : "No firing said"}, ${coneWords(cone)}`;

function Pressing({ group }: { readonly group: FiringGroup }) {
  const { latePieces, soonPieces, pieces: all, freePieces } = group;
  const inLoads = all - freePieces;
  const parts = [
    latePieces > 0 ? `${latePieces} late` : "",
    soonPieces > 0 ? `${soonPieces} due in 7 days` : "",
    inLoads > 0 ? `${inLoads} in loads` : "",
  ].filter(Boolean);
  if (parts.length === 0) return <span className={styles.soft}>none due soon</span>;
  const look = latePieces > 0 ? styles.late : soonPieces > 0 ? styles.soon : styles.soft;
  return (
    <span className={look}>
      {latePieces > 0 && <MindIcon size={16} />}
      {parts.join(", ")}
    </span>
  );
}
