/**
 * The fewest points, chosen one after another, between which straight lines stay near to all the others.
 *
 * @param points [minute, °C], minutes rising
 * @param nearC how near, °C
 */
export function straightened(
  points: readonly (readonly [number, number])[],
  nearC: number,
): (readonly [number, number])[] {
  const kept = points.slice(0, 1);
  let from = 0;
  // The slopes at which a line from the last point kept passes near every point since.
  let [least, most] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (let to = 1; to < points.length; to++) {
    const [m0, c0] = points[from] as readonly [number, number];
    const [m1, c1] = points[to] as readonly [number, number];
    const slope = (c1 - c0) / (m1 - m0);
    if (slope < least || slope > most) {
      from = to - 1;
      kept.push(points[from] as readonly [number, number]);
      [least, most] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
      to -= 1;
      continue;
    }
    least = Math.max(least, (c1 - nearC - c0) / (m1 - m0));
    most = Math.min(most, (c1 + nearC - c0) / (m1 - m0));
  }
  if (points.length > 1) kept.push(points.at(-1) as readonly [number, number]);
  return kept;
}

/** What lies on the straight lines between points at a minute; its ends beyond them. */
export function linearAt(points: readonly (readonly number[])[], minute: number): number {
  const after = points.findIndex(([at = 0]) => at >= minute);
  const [m1 = 0, c1 = 0] = points[after < 0 ? points.length - 1 : after] ?? [];
  const before = points[after - 1];
  if (after <= 0 || before === undefined) return c1;
  const [m0 = 0, c0 = 0] = before;
  return c0 + ((minute - m0) / (m1 - m0)) * (c1 - c0);
}
