import styles from "./piece.module.css";
import type { PieceDrawn } from "./piece-marks.ts";

// How thick a handle is drawn, in millimetres of the piece: its own thickness is nobody's measure.
const HANDLE_MM = 9;

/** A drawn piece's lines and faces, inside an SVG whose units are px; its axis at x = 0 and its stand at y = 0. */
export function PieceMarks({ drawn, pxPerMm }: { readonly drawn: PieceDrawn; readonly pxPerMm: number }) {
  return (
    <g transform={`scale(${pxPerMm})`}>
      {drawn.marks.map(({ part, d }) =>
        part === "handle" ? (
          <g key={part}>
            <path className={styles.handleEdge} d={d} strokeWidth={HANDLE_MM + 3 / pxPerMm} />
            <path className={styles.handle} d={d} strokeWidth={HANDLE_MM} />
          </g>
        ) : (
          <path key={part} className={styles[part]} d={d} vectorEffect="non-scaling-stroke" />
        ),
      )}
    </g>
  );
}
