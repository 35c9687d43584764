import { useEffect, useRef, useState } from "react";
import type { LengthUnits } from "../../../measures/length.ts";
import { Sign } from "../../parts/index.ts";
import { answerWords } from "../words/answer-words.ts";
import styles from "./LiveLine.module.css";
import type { InHand } from "./use-hand.ts";

/** Ears are told no more often than this. */
const SAID_EVERY_MS = 900;

interface LiveLineProps {
  readonly inHand: InHand;
  readonly units: LengthUnits;
  /** What is said while nothing is in her hand. */
  readonly resting: React.ReactNode;
}

/** What the rules say to the piece in her hand, in words, at once for eyes and now and then for ears. */
export function LiveLine({ inHand, units, resting }: LiveLineProps) {
  const { hand, live, over } = inHand;
  const line = useRef<HTMLParagraphElement>(null);
  const [said, setSaid] = useState("");
  useEffect(() => {
    if (!hand) {
      setSaid("");
      return;
    }
    let timer: ReturnType<typeof setTimeout> | undefined;
    const show = (): void => {
      const state = live.get();
      if (!state || !line.current) return;
      const breaks = state.broken.length > 0;
      line.current.dataset.answer = breaks ? "breaks" : "keeps";
      const words = answerWords(state, units);
      const keeps = line.current.querySelector("[data-words]");
      if (keeps) keeps.textContent = `${hand.ware.name}: ${words}`;
      timer ??= setTimeout(() => {
        timer = undefined;
        const now = live.get();
        if (now) setSaid(`${now.broken.length > 0 ? "Too near. " : ""}${answerWords(now, units)}`);
      }, SAID_EVERY_MS);
    };
    show();
    const stop = live.subscribe(show);
    return () => {
      stop();
      clearTimeout(timer);
    };
  }, [hand, live, units]);
  return (
    <div className={styles.line}>
      <div className="heard" aria-live="polite">
        {said}
      </div>
      {!hand && resting}
      {hand && over !== null && <p>{overWords(over, hand.ware.name)}</p>}
      {hand && (
        <p ref={line} className={styles.answer} hidden={over !== null} aria-hidden="true">
          <span className={styles.keeps}>
            <Sign kind="keeps">{""}</Sign>
          </span>
          <span className={styles.breaks}>
            <Sign kind="breaks">{""}</Sign>
          </span>
          <span data-words="" />
        </p>
      )}
    </div>
  );
}

function overWords(over: NonNullable<InHand["over"]>, name: string): string {
  if (over === "tray") return `Let go to take the ${name} out`;
  if (over === "nothing") return "Let go here and it stays where it was";
  return `Let go to set the ${name} on level ${over.level + 1}`;
}
