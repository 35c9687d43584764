/** What a field holds, read: a value, nothing, or words that say what is wrong. */
export interface ReadText<Value> {
  readonly value: Value | null;
  readonly problem: string | null;
}

export interface NumberLimits {
  readonly min?: number | undefined;
  readonly max?: number | undefined;
  readonly isWhole?: boolean | undefined;
}

/** Reads a number as it is typed: "12", "2,5", " 0.75 ". Nothing typed is no number and no problem. */
export function readNumberText(text: string, { min, max, isWhole = false }: NumberLimits): ReadText<number> {
  const plain = text.trim().replace(",", ".").replace("−", "-");
  if (plain === "") return { value: null, problem: null };
  const value = Number(plain);
  const wrong = (problem: string) => ({ value: null, problem });
  if (!/^-?\d*\.?\d*$/.test(plain) || !Number.isFinite(value) || plain === "-" || plain === ".")
    return wrong(`“${text.trim()}” is not a number.`);
  if (isWhole && !Number.isInteger(value)) return wrong("A whole number, please.");
  if (min !== undefined && value < min) return wrong(`At least ${min}.`);
  if (max !== undefined && value > max) return wrong(`At most ${max}.`);
  return { value, problem: null };
}
