import { useNarrow } from "../load-editor/use-narrow.ts";
import { ConesOfShelf } from "./cones/ConesOfShelf.tsx";
import { PieceList } from "./judging/PieceList.tsx";
import type { FiredPiece } from "./judging/pieces.ts";
import { ShelfDrawing } from "./judging/ShelfDrawing.tsx";
import styles from "./ShelfStop.module.css";
import type { Unloading } from "./use-unloading.ts";

interface ShelfStopProps {
  readonly unloading: Unloading;
  readonly level: number;
  readonly chosen: FiredPiece | null;
  readonly onChoose: (key: string) => void;
}

/** One shelf as it was loaded: its pieces to be judged, its witness cones. */
export function ShelfStop({ unloading, level, chosen, onChoose }: ShelfStopProps) {
  const { sheet, pieces, judged } = unloading;
  const isNarrow = useNarrow();
  return (
    <section className={styles.shelf} aria-label={`Shelf ${level + 1}`}>
      <div className={styles.picture}>
        <ShelfDrawing sheet={sheet} level={level} judged={judged} chosen={chosen?.key ?? null} onChoose={onChoose} />
        <ConesOfShelf key={level} unloading={unloading} level={level} isOpen={!isNarrow} />
      </div>
      <PieceList
        pieces={pieces.filter((piece) => piece.level === level)}
        judged={judged}
        chosen={chosen?.key ?? null}
        onChoose={onChoose}
      />
    </section>
  );
}
