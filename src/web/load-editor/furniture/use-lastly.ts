import { useEffect, useRef } from "react";

/** Does something as the component goes: what she holds is set down, not lost, where another level is looked at. */
export function useLastly(work: () => void): void {
  const latest = useRef(work);
  latest.current = work;
  useEffect(() => () => latest.current(), []);
}
