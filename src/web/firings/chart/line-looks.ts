import type { LineLook } from "./chart-series.ts";

/** How each kind of line is drawn: a token of the look, pixels wide, its dashes. */
export const LINES: Readonly<
  Record<LineLook, { readonly token: string; readonly width: number; readonly dash: readonly number[] }>
> = {
  programme: { token: "ink-soft", width: 1.5, dash: [6, 4] },
  foretold: { token: "celadon", width: 2, dash: [] },
  rest: { token: "clay", width: 2, dash: [3, 4] },
  measured: { token: "clay", width: 3, dash: [] },
  level: { token: "edge", width: 1, dash: [] },
  "heat work": { token: "ochre", width: 2, dash: [2, 3] },
};
