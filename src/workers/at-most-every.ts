/** A teller that passes the newest on at once, or as soon as `milliseconds` have gone by since the last. */
export interface AtMostEvery<Value> {
  readonly tell: (value: Value) => void;
  /** Forgets what is still waiting to be told. */
  readonly end: () => void;
}

/** Passes on no more than one value in so many milliseconds: the first at once, and after the last of many that last one. */
export function atMostEvery<Value>(milliseconds: number, pass: (value: Value) => void): AtMostEvery<Value> {
  let timer: NodeJS.Timeout | null = null;
  let waiting: { readonly value: Value } | null = null;
  const passOn = (value: Value): void => {
    waiting = null;
    timer = setTimeout(() => {
      timer = null;
      if (waiting) passOn(waiting.value);
    }, milliseconds);
    pass(value);
  };
  return {
    tell: (value) => {
      if (timer) waiting = { value };
      else passOn(value);
    },
    end: () => {
      if (timer) clearTimeout(timer);
      timer = null;
      waiting = null;
    },
  };
}
