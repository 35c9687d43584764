import { formOutline } from "../../../ware/forms.ts";
import type { Ware } from "../../../ware/ware.ts";

/** A piece's side as [height, radius] pairs, foot to rim. Millimetres. */
export type Side = readonly (readonly [heightMm: number, radiusMm: number])[];

// Between two points of a profile the curve is drawn with so many straight steps.
const STEPS = 3;
const CLOSED_FORMS: ReadonlySet<string | null> = new Set(["lid", "teapot", "box", "tile"]);
const OPEN_FORMS: ReadonlySet<string | null> = new Set([
  "beaker",
  "mug",
  "bowl",
  "plate",
  "vase",
  "bottle",
  "jar",
  "jug",
]);

/** A piece's side as she drew it, or as its form has it, or straight up. */
export function sideOf(ware: Ware): Side {
  const drawn = ware.profile ?? (ware.form ? formOutline(ware.form, ware).profile : null);
  const half = ware.diameterMm / 2;
  return (
    drawn ?? [
      [0, half],
      [ware.heightMm, half],
    ]
  );
}

/** True where one can look into it from above: it is drawn with a wall and a hollow. */
export const isOpen = ({ form, profile }: Ware): boolean =>
  OPEN_FORMS.has(form) || (profile !== null && !CLOSED_FORMS.has(form));

/**
 * The side with its corners rounded, as hands leave them. It passes through every point given and never reaches beyond
 * the two it lies between, so that the drawing stays within the solid the rules measure.
 */
export function rounded(side: Side): Side {
  if (side.length < 3) return side;
  const smooth: [number, number][] = [];
  side.forEach((point, i) => {
    const next = side[i + 1];
    if (!next) {
      smooth.push([...point]);
      return;
    }
    const before = side[i - 1] ?? point;
    const after = side[i + 2] ?? next;
    for (let step = 0; step < STEPS; step += 1) {
      const t = step / STEPS;
      smooth.push([
        clamped(between(before[0], point[0], next[0], after[0], t), point[0], next[0]),
        clamped(between(before[1], point[1], next[1], after[1], t), point[1], next[1]),
      ]);
    }
  });
  return smooth;
}

/** The radius at a height. */
export function radiusAt(side: Side, heightMm: number): number {
  for (let i = 1; i < side.length; i += 1) {
    const [low, lowOut] = side[i - 1] as Side[number];
    const [high, highOut] = side[i] as Side[number];
    if (heightMm > high) continue;
    return high === low ? highOut : lowOut + ((heightMm - low) / (high - low)) * (highOut - lowOut);
  }
  return side.at(-1)?.[1] ?? 0;
}

/** Catmull and Rom's curve through b and c, whose neighbours are a and d. */
function between(a: number, b: number, c: number, d: number, t: number): number {
  return b + 0.5 * t * (c - a + t * (2 * a - 5 * b + 4 * c - d + t * (3 * (b - c) + d - a)));
}

const clamped = (value: number, one: number, other: number): number =>
  Math.min(Math.max(value, Math.min(one, other)), Math.max(one, other));
