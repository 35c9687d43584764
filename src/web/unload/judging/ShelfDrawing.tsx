import type { SheetLoad } from "../../../sheets/sheet-load.ts";
import { placeKey } from "../../../studio/loads/places.ts";
import type { Grade } from "../../../studio/records/faults.ts";
import type { Outcome } from "../../../studio/records/firing-parts.ts";
import base from "../../kilns/drawing/Drawing.module.css";
import { planBox } from "../../kilns/drawing/frame.ts";
import { kindSigns } from "../../load-editor/drawing/kind-signs.ts";
import { LevelGround, lowestRimFirst, Standing, signOf } from "../../load-editor/drawing/LevelMarks.tsx";
import { levelFrame } from "../../load-editor/drawing/level-frame.ts";
import { PieceFromAbove } from "../../load-editor/drawing/PieceFromAbove.tsx";
import styles from "./ShelfDrawing.module.css";

interface ShelfDrawingProps {
  readonly sheet: SheetLoad;
  readonly level: number;
  readonly judged: ReadonlyMap<string, Outcome>;
  readonly chosen: string | null;
  readonly onChoose: (key: string) => void;
}

/** A shelf from above as it was loaded, each piece with how it came out; a press chooses one. */
export function ShelfDrawing({ sheet, level: index, judged, chosen, onChoose }: ShelfDrawingProps) {
  const level = sheet.levels.find((each) => each.index === index) ?? null;
  const frame = levelFrame(sheet.request.kiln.chamber);
  const signs = kindSigns(sheet.request.ware);
  const pieces = level?.pieces ?? [];
  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: pressing a piece is a short way; the list beside it has them all.
    <svg
      className={`${base.drawing} ${styles.drawing}`}
      viewBox={planBox(frame)}
      role="img"
      aria-label={`Shelf ${index + 1} from above, ${pieces.length} pieces; the list beside it has them all`}
      onClick={(event) => {
        const key = (event.target as Element).closest("[data-place]")?.getAttribute("data-place");
        if (key) onChoose(key);
      }}
    >
      <LevelGround load={sheet} level={level} frame={frame} />
      {lowestRimFirst(pieces).map((numbered) => {
        const key = placeKey(numbered.piece);
        const grade = judged.get(key)?.grade;
        const radius = numbered.piece.ware.diameterMm / 2;
        return (
          <Standing key={key} numbered={numbered}>
            <title>{numbered.piece.ware.name}</title>
            <g className={grade === undefined ? styles.open : styles.judged}>
              <PieceFromAbove
                ware={numbered.piece.ware}
                turnDeg={numbered.turnDeg}
                number={numbered.number}
                sign={signOf(signs, numbered)}
                letter={frame.letter}
              />
            </g>
            {key === chosen && <circle className={styles.chosen} r={radius + frame.letter * 0.22} />}
            {grade && (
              <GradeBadge grade={grade} at={radius * 0.68} size={Math.min(frame.letter * 0.62, radius * 0.55)} />
            )}
          </Standing>
        );
      })}
    </svg>
  );
}

/** A sign within a square two wide: a tick, a stroke through half, a cross. */
const GRADE_SIGNS: Readonly<Record<Grade, string>> = {
  good: "M-.55.05L-.15.45L.6-.45",
  second: "M-.45 0H.45",
  lost: "M-.45-.45L.45.45M.45-.45L-.45.45",
};

function GradeBadge({ grade, at, size }: { readonly grade: Grade; readonly at: number; readonly size: number }) {
  return (
    <g className={styles[grade]} transform={`translate(${at} ${-at}) scale(${size})`}>
      <circle r={1} />
      <path d={GRADE_SIGNS[grade]} />
    </g>
  );
}
