/** A solid's side from its foot up: straight between neighbouring [height, how far it swells] pairs. Millimetres. */
export type Rings = readonly (readonly [heightMm: number, radiusMm: number])[];

/**
 * The distance in space between two upright solids whose cores stand `apartMm` from each other seen from above.
 *
 * Each solid holds, at every height, the places within its ring's radius of its core. So only two things count: how far
 * apart the cores are, and how high. That leaves a flat problem: one side facing the other mirrored, straight piece by
 * straight piece; the least distance between two straight-sided pieces that do not meet is at a corner of one of them.
 * Exact.
 *
 * @param apartMm between the cores; below zero where the cores themselves overlap
 * @returns millimetres; below zero where the solids overlap: how far apart they would have to be moved, sideways or up
 */
export function meridianDistanceMm(apartMm: number, a: Rings, b: Rings): number {
  let nearest = Number.POSITIVE_INFINITY;
  let deepest = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < Math.max(1, a.length - 1); i++) {
    const [aLow, aLowOut] = a[i]!;
    const [aHigh, aHighOut] = a[i + 1] ?? a[i]!;
    for (let j = 0; j < Math.max(1, b.length - 1); j++) {
      const [bLow, bLowOut] = b[j]!;
      const [bHigh, bHighOut] = b[j + 1] ?? b[j]!;
      const from = Math.max(aLow, bLow);
      const to = Math.min(aHigh, bHigh);
      if (from <= to) {
        const low = outAt(aLow, aLowOut, aHigh, aHighOut, from) + outAt(bLow, bLowOut, bHigh, bHighOut, from);
        const high = outAt(aLow, aLowOut, aHigh, aHighOut, to) + outAt(bLow, bLowOut, bHigh, bHighOut, to);
        deepest = Math.max(deepest, Math.max(low, high) - apartMm);
      }
      nearest = Math.min(
        nearest,
        pointToSide(apartMm - bLowOut, bLow, aLow, aLowOut, aHigh, aHighOut),
        pointToSide(apartMm - bHighOut, bHigh, aLow, aLowOut, aHigh, aHighOut),
        pointToSide(apartMm - aLowOut, aLow, bLow, bLowOut, bHigh, bHighOut),
        pointToSide(apartMm - aHighOut, aHigh, bLow, bLowOut, bHigh, bHighOut),
      );
    }
  }
  if (deepest < 0) return nearest;
  const upward = Math.min(a.at(-1)![0] - b[0]![0], b.at(-1)![0] - a[0]![0]);
  return -Math.min(deepest, upward);
}

function outAt(low: number, lowOut: number, high: number, highOut: number, height: number): number {
  if (high - low < 1e-12) return Math.max(lowOut, highOut);
  return lowOut + ((highOut - lowOut) * (height - low)) / (high - low);
}

/** From a point (out, up) to everything on the inner side of one straight piece, between its two heights. */
function pointToSide(out: number, up: number, low: number, lowOut: number, high: number, highOut: number): number {
  if (up >= low && up <= high && out <= outAt(low, lowOut, high, highOut, up)) return 0;
  const below = up <= low ? Math.hypot(Math.max(0, out - lowOut), low - up) : Number.POSITIVE_INFINITY;
  const above = up >= high ? Math.hypot(Math.max(0, out - highOut), up - high) : Number.POSITIVE_INFINITY;
  const dUp = high - low;
  const dOut = highOut - lowOut;
  const square = dUp * dUp + dOut * dOut;
  const along = square === 0 ? 0 : Math.min(1, Math.max(0, ((up - low) * dUp + (out - lowOut) * dOut) / square));
  const side = Math.hypot(low + along * dUp - up, lowOut + along * dOut - out);
  return Math.min(below, above, side);
}
