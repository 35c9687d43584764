import type { LineLook } from "./chart-series.ts";
import { LINES } from "./line-looks.ts";

/** A short piece of a line, for the key. */
export function LineSample({ look }: { readonly look: LineLook }) {
  const { token, width, dash } = LINES[look];
  return (
    <svg width="28" height="10" viewBox="0 0 28 10" aria-hidden="true">
      <line
        x1="1"
        x2="27"
        y1="5"
        y2="5"
        stroke={`var(--${token})`}
        strokeWidth={width}
        strokeDasharray={dash.length > 0 ? dash.join(" ") : undefined}
      />
    </svg>
  );
}
