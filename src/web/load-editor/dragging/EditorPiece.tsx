import { memo } from "react";
import type { NumberedPiece } from "../../../sheets/sheet-load.ts";
import { placeKey } from "../../../studio/loads/places.ts";
import type { KindSign } from "../drawing/kind-signs.ts";
import marks from "../drawing/Marks.module.css";
import { PieceFromAbove } from "../drawing/PieceFromAbove.tsx";
import styles from "./EditorDrawing.module.css";

interface EditorPieceProps {
  readonly numbered: NumberedPiece;
  readonly sign: KindSign | undefined;
  readonly letter: number;
  readonly label: string;
  readonly isChosen: boolean;
  readonly isBroken: boolean;
  readonly isPinned: boolean;
  readonly isIn: boolean;
  /** It is in her hand: where it stood is shown faintly. */
  readonly isLifted: boolean;
  /** The one that Tab comes to. */
  readonly isFirst: boolean;
}

/** A piece on the level, to be pressed, dragged, and reached by keys. */
export const EditorPiece = memo(function EditorPiece(props: EditorPieceProps) {
  const { numbered, sign, letter, label, isChosen, isBroken, isPinned, isIn, isLifted, isFirst } = props;
  const { x, y, ware } = numbered.piece;
  const size = Math.min(letter * 1.1, ware.diameterMm * 0.475);
  const looks = [
    marks.piece,
    styles.grab,
    isChosen && marks.chosen,
    isBroken && marks.broken,
    isLifted && styles.lifted,
  ];
  return (
    // biome-ignore lint/a11y/useSemanticElements: a drawing's part cannot be a button
    <g
      role="button"
      tabIndex={isFirst ? 0 : -1}
      data-place={placeKey(numbered.piece)}
      className={looks.filter(Boolean).join(" ")}
      transform={`translate(${x} ${-y})`}
      aria-label={label}
      aria-pressed={isChosen}
    >
      <PieceFromAbove
        ware={ware}
        turnDeg={numbered.turnDeg}
        number={numbered.number}
        sign={sign}
        letter={letter}
        isPinned={isPinned}
        isIn={isIn}
      />
      {isBroken && (
        <g className={styles.wrong} transform={`translate(${size * 0.8} ${size * 0.75})`}>
          <circle r={size * 0.42} />
          <text fontSize={size * 0.7}>!</text>
        </g>
      )}
    </g>
  );
});
