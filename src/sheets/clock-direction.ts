/** The direction in half hours from 12 o'clock (+y), clockwise as on a clock seen from above. */
function halfHours(angleDeg: number): number {
  const halves = Math.round((90 - angleDeg) / 15) % 24;
  return halves < 0 ? halves + 24 : halves;
}

/**
 * A direction as a potter points it out: the face of a clock laid in the kiln, 12 at the far side (+y), 3 along +x.
 * To the half hour, so within 7.5 degrees.
 *
 * @param angleDeg counter-clockwise seen from above, 0 along +x
 * @returns `4 o'clock`, or `4:30` half way to 5
 */
export function clockText(angleDeg: number): string {
  const halves = halfHours(angleDeg);
  const hour = Math.floor(halves / 2) || 12;
  return halves % 2 === 0 ? `${hour} o’clock` : `${hour}:30`;
}

/** Several directions in one phrase: `1, 5 and 9 o'clock`, `1 o'clock, 4:30 and 9 o'clock`. */
export function clockList(angles: readonly number[]): string {
  const sorted = [...angles].sort((a, b) => halfHours(a) - halfHours(b));
  const texts = sorted.map(clockText);
  const whole = texts.every((text) => text.endsWith(" o’clock"));
  return listText(
    whole ? [...texts.slice(0, -1).map((text) => text.replace(" o’clock", "")), ...texts.slice(-1)] : texts,
  );
}

/** `a`, `a and b`, `a, b and c`. */
export function listText(parts: readonly string[]): string {
  return parts.length < 2 ? (parts[0] ?? "") : `${parts.slice(0, -1).join(", ")} and ${parts.at(-1)}`;
}
