/** Whether two values of JSON say the same, whatever the order of their fields. A field left out is one of `undefined`. */
export function sameValue(a: unknown, b: unknown): boolean {
  if (a === b) return true;
  if (typeof a !== "object" || typeof b !== "object" || a === null || b === null) return false;
  if (Array.isArray(a) !== Array.isArray(b)) return false;
  if (Array.isArray(a) && a.length !== (b as unknown[]).length) return false;
  const [one, other] = [a as Readonly<Record<string, unknown>>, b as Readonly<Record<string, unknown>>];
  const names = new Set([...Object.keys(one), ...Object.keys(other)]);
  for (const name of names) if (!sameValue(one[name], other[name])) return false;
  return true;
}
