import { useEffect, useRef, useState } from "react";

const PAUSE_MS = 700;

/**
 * A value that is changed in several quick steps and given on once: after a pause, on leaving the field, or when the row
 * it stands in scrolls away.
 */
export function usePending<Value>(value: Value, give: (value: Value) => void) {
  const [pending, setPending] = useState<{ readonly value: Value } | null>(null);
  const latest = useRef({ pending, give });
  latest.current = { pending, give };
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined);
  const flush = (): void => {
    clearTimeout(timer.current);
    const held = latest.current.pending;
    if (!held) return;
    latest.current.pending = null;
    setPending(null);
    latest.current.give(held.value);
  };
  const onLeave = useRef(flush);
  onLeave.current = flush;
  useEffect(() => () => onLeave.current(), []);
  const set = (next: Value): void => {
    latest.current.pending = { value: next };
    setPending({ value: next });
    clearTimeout(timer.current);
    timer.current = setTimeout(() => onLeave.current(), PAUSE_MS);
  };
  return { shown: pending ? pending.value : value, set, flush };
}
