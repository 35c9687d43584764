import { useRef } from "react";
import { sameValue } from "../../studio/history/same-value.ts";

/** A value that stays the same object as long as it says the same, so that what is made of it is not made again. */
export function useSteady<Value>(value: Value): Value {
  const kept = useRef(value);
  if (!sameValue(kept.current, value)) kept.current = value;
  return kept.current;
}
