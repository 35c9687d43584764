import type { LoadPlan } from "../../loading/load-plan.ts";
import type { LoadRequest } from "../../loading/load-request.ts";
import { LengthText } from "../parts/index.ts";
import { pieces } from "../waiting/words/ware-words.ts";
import styles from "./InSpace.module.css";
import type { PiecePlace } from "./load-in-space.ts";
import { loadInWords } from "./load-in-words.ts";

interface LevelsInWordsProps {
  readonly request: LoadRequest;
  readonly plan: LoadPlan;
  readonly chosen: PiecePlace | null;
  readonly onChoose: (place: PiecePlace | null) => void;
}

/** What stands where, in words: for who does not see the picture, and to find a piece in it. Pressing again goes on to the next of its kind. */
export function LevelsInWords({ request, plan, chosen, onChoose }: LevelsInWordsProps) {
  const { probes, spyholes } = request.kiln;
  return (
    <section className={styles.words} aria-label="What stands where">
      {loadInWords(plan).map(({ level, topMm, pieces: count, kinds }) => (
        <div key={level}>
          <h2>Level {level + 1}</h2>
          <p className={styles.hands}>
            {pieces(count)}, on a shelf <LengthText mm={topMm} /> above the floor
          </p>
          <ul className={styles.kinds}>
            {kinds.map(({ ware, placements }) => {
              const at = chosen?.level === level ? placements.indexOf(chosen.placement) : -1;
              const next = placements[(at + 1) % placements.length] as number;
              return (
                <li key={ware}>
                  <button
                    type="button"
                    className={styles.kind}
                    aria-pressed={at >= 0}
                    onClick={() => onChoose({ level, placement: next })}
                  >
                    <span>{ware}</span>
                    <span className={styles.count}>
                      {at >= 0 && placements.length > 1
                        ? `${at + 1} of ${placements.length}`
                        : `× ${placements.length}`}
                    </span>
                  </button>
                </li>
              );
            })}
          </ul>
        </div>
      ))}
      {probes.length + spyholes.length > 0 && (
        <div>
          <h2>In the wall</h2>
          <ul className={styles.wall}>
            {probes.map((probe) => (
              <li key={probe.name}>
                {probe.name}, <LengthText mm={probe.heightMm} /> above the floor
              </li>
            ))}
            {spyholes.map((hole) => (
              <li key={hole.name}>
                {hole.name}, <LengthText mm={hole.heightMm} /> above the floor, {hole.open ? "open" : "plugged"}
              </li>
            ))}
          </ul>
        </div>
      )}
    </section>
  );
}
