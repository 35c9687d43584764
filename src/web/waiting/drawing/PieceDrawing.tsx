import { formatLength, type LengthUnits } from "../../../measures/length.ts";
import { formOutline } from "../../../ware/forms.ts";
import { TYPICAL_SIZE } from "../batch/typical-size.ts";
import { PieceMarks } from "./PieceMarks.tsx";
import styles from "./piece.module.css";
import { drawPiece, type Seen } from "./piece-marks.ts";

const WIDTH = 340;
const HEIGHT = 210;
const STAND_Y = HEIGHT - 34;
const TOP_Y = 12;
/** However low the piece, the drawing keeps about its height, so that what is below it does not jump while she types. */
const LEAST_HEIGHT = 120;
/** Room at the left for the height's measure, and between the piece and the mug. */
const LEFT = 74;
const BETWEEN = 26;

const MUG = { form: "mug", ...formOutline("mug", TYPICAL_SIZE.mug) } as const;
const MUG_DRAWN = drawPiece(MUG);

export interface PieceDrawingProps {
  readonly seen: Seen;
  readonly units: LengthUnits;
  /** False where the size is not typed yet and the drawing shows an ordinary one. */
  readonly isMeasured: boolean;
}

/** A piece to scale with its measures, beside an ordinary mug drawn at the same scale. */
export function PieceDrawing({ seen, units, isMeasured }: PieceDrawingProps) {
  const drawn = drawPiece(seen);
  const width = drawn.rightMm - drawn.leftMm;
  const mugWidth = MUG_DRAWN.rightMm - MUG_DRAWN.leftMm;
  const pxPerMm = Math.min(
    (WIDTH - LEFT - BETWEEN - 8) / (width + mugWidth),
    (STAND_Y - TOP_Y) / Math.max(drawn.topMm, MUG_DRAWN.topMm),
  );
  const axis = LEFT - drawn.leftMm * pxPerMm;
  const mugAxis = axis + drawn.rightMm * pxPerMm + BETWEEN - MUG_DRAWN.leftMm * pxPerMm;
  const half = (seen.diameterMm / 2) * pxPerMm;
  const top = STAND_Y - drawn.topMm * pxPerMm;
  const clear = Math.min(STAND_Y - LEAST_HEIGHT, top, STAND_Y - MUG_DRAWN.topMm * pxPerMm) - TOP_Y;
  const across = formatLength(seen.diameterMm, units);
  const tall = formatLength(drawn.topMm, units);
  const words = isMeasured ? `${across} across and ${tall} tall` : "no size yet";
  return (
    <figure className={styles.figure}>
      <svg
        className={styles.drawing}
        viewBox={`0 ${clear} ${WIDTH} ${HEIGHT - clear}`}
        role="img"
        aria-label={`The piece: ${words}`}
      >
        <path className={styles.stand} d={`M 8 ${STAND_Y} H ${WIDTH - 8}`} />
        <g className={styles.beside} transform={`translate(${mugAxis} ${STAND_Y})`}>
          <PieceMarks drawn={MUG_DRAWN} pxPerMm={pxPerMm} />
        </g>
        <g className={isMeasured ? undefined : styles.guessed} transform={`translate(${axis} ${STAND_Y})`}>
          <PieceMarks drawn={drawn} pxPerMm={pxPerMm} />
        </g>
        <text className={styles.besideWords} x={mugAxis} y={STAND_Y + 18} textAnchor="middle">
          a mug
        </text>
        {isMeasured && (
          <>
            <Measure from={[axis - half, STAND_Y + 8]} to={[axis + half, STAND_Y + 8]} />
            <text className={styles.words} x={axis} y={STAND_Y + 26} textAnchor="middle">
              {across}
            </text>
            <Measure from={[LEFT - 10, STAND_Y]} to={[LEFT - 10, top]} />
            <text className={styles.words} x={LEFT - 18} y={(STAND_Y + top) / 2 + 4} textAnchor="end">
              {tall}
            </text>
          </>
        )}
      </svg>
    </figure>
  );
}

type Place = readonly [x: number, y: number];

/** A measuring line with a tick at each end. */
function Measure({ from: [x1, y1], to: [x2, y2] }: { readonly from: Place; readonly to: Place }) {
  const [tickX, tickY] = x1 === x2 ? [4, 0] : [0, 4];
  const tick = (x: number, y: number): string => `M ${x - tickX} ${y - tickY} L ${x + tickX} ${y + tickY}`;
  return <path className={styles.measure} d={`M ${x1} ${y1} L ${x2} ${y2} ${tick(x1, y1)} ${tick(x2, y2)}`} />;
}
