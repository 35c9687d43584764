import { memo } from "react";
import { PieceMarks } from "./PieceMarks.tsx";
import styles from "./piece.module.css";
import { drawPiece, type Seen } from "./piece-marks.ts";

const EDGE_PX = 3;

/** A piece's silhouette, as large as fits a square. It says nothing that words beside it do not. */
export const PieceIcon = memo(function PieceIcon({ seen, sizePx }: { readonly seen: Seen; readonly sizePx: number }) {
  // A tile from the side is a line: it is shown from above.
  const drawn = drawPiece(seen.form === "tile" ? { ...seen, form: "box", heightMm: seen.diameterMm } : seen);
  const width = drawn.rightMm - drawn.leftMm;
  const room = sizePx - 2 * EDGE_PX;
  const pxPerMm = Math.min(room / width, room / drawn.topMm);
  const x = sizePx / 2 - ((drawn.leftMm + drawn.rightMm) / 2) * pxPerMm;
  const y = sizePx / 2 + (drawn.topMm / 2) * pxPerMm;
  return (
    <svg className={styles.icon} width={sizePx} height={sizePx} viewBox={`0 0 ${sizePx} ${sizePx}`} aria-hidden="true">
      <g transform={`translate(${x} ${y})`}>
        <PieceMarks drawn={drawn} pxPerMm={pxPerMm} />
      </g>
    </svg>
  );
});
