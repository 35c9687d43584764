import { useCallback, useEffect, useRef, useState } from "react";

/**
 * An answer that takes too long for every move: asked at most every so often, and once more when the moves stop.
 *
 * @returns the latest answer, a function to ask, one to forget it
 */
export function useThrottled<Answer>(everyMs: number): {
  readonly answer: Answer | null;
  readonly ask: (question: () => Answer) => void;
  readonly forget: () => void;
} {
  const [answer, setAnswer] = useState<Answer | null>(null);
  const latest = useRef<(() => Answer) | null>(null);
  const timer = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  const forget = useCallback(() => {
    clearTimeout(timer.current);
    timer.current = undefined;
    latest.current = null;
    setAnswer(null);
  }, []);
  useEffect(() => () => clearTimeout(timer.current), []);
  const ask = useCallback(
    (question: () => Answer) => {
      latest.current = question;
      timer.current ??= setTimeout(() => {
        timer.current = undefined;
        if (latest.current) setAnswer(latest.current());
      }, everyMs);
    },
    [everyMs],
  );
  return { answer, ask, forget };
}
