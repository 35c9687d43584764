/** From the kiln to the paper: x to the right, y up the page, `scale` millimetres of kiln to one of paper. */
export interface ToPaper {
  readonly scale: number;
  readonly length: (mm: number) => number;
  readonly x: (mm: number) => number;
  readonly y: (mm: number) => number;
}

/** Scales a potter can check with a ruler. */
export const SCALES = [
  1, 1.25, 1.5, 2, 2.5, 3, 3.5, 4, 4.5, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40, 50, 75, 100, 150, 200, 300, 400, 500,
];

/** A drawing's coordinates about the chamber's axis, at a scale. Millimetres. */
export function toPaper(scale: number): ToPaper {
  return { scale, length: (mm) => mm / scale, x: (mm) => mm / scale, y: (mm) => -mm / scale };
}

/** `1:3`. */
export const scaleText = (scale: number): string => `1:${scale}`;
