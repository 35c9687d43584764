import { movePiece } from "../../../loading/editing/edit-pieces.ts";
import type { Edited } from "../../../loading/editing/open-plan.ts";
import type { NumberedPiece, SheetLoad } from "../../../sheets/sheet-load.ts";
import { type Place, placeKey } from "../../../studio/loads/places.ts";
import { PinIcon, Sign } from "../../parts/index.ts";
import { useSettings } from "../../studio/hooks.ts";
import { whereWords } from "../words/place-words.ts";
import styles from "./InWords.module.css";
import { PlaceFields } from "./PlaceFields.tsx";

interface PieceListProps {
  readonly load: SheetLoad;
  readonly level: number;
  readonly chosen: Place | null;
  readonly pins: readonly Place[];
  /** Places of pieces that break a rule. */
  readonly broken: ReadonlySet<string>;
  readonly onChoose: (place: Place) => void;
  /** Left out where nothing may be changed now. */
  readonly onEdit?: ((edited: Edited, note: string) => void) | undefined;
}

/** The level in words: what stands where, in the order it is set down; the chosen piece can be placed by numbers. */
export function PieceList({ load, level: index, chosen, pins, broken, onChoose, onEdit }: PieceListProps) {
  const level = load.levels[index];
  const pinned = new Set(pins.map(placeKey));
  if (!level || level.pieces.length === 0) return <p className={styles.none}>Nothing stands on this level.</p>;
  return (
    <ol className={styles.list}>
      {level.pieces.map((numbered) => {
        const { piece } = numbered;
        const key = placeKey(piece);
        const isChosen = chosen !== null && placeKey(chosen) === key;
        return (
          <li key={key} className={isChosen ? styles.chosen : undefined}>
            <button
              type="button"
              className={styles.piece}
              aria-pressed={isChosen}
              onClick={() => onChoose({ level: piece.level, placement: piece.placement })}
            >
              <span className={styles.number}>{numbered.number}</span>
              <PieceWords numbered={numbered} isPinned={pinned.has(key)} isBroken={broken.has(key)} />
            </button>
            {isChosen && onEdit && (
              <PlaceFields
                of={piece.ware.name}
                xMm={piece.x}
                yMm={piece.y}
                turnDeg={piece.ware.handle || piece.ware.spout ? numbered.turnDeg : undefined}
                onChange={(change) => {
                  const spot = { xMm: piece.x, yMm: piece.y, turnDeg: numbered.turnDeg, ...change };
                  const what = change.turnDeg === undefined ? "moved" : "turned";
                  onEdit(movePiece(load.request, load.plan, piece, spot), `${what} the ${piece.ware.name}`);
                }}
              />
            )}
          </li>
        );
      })}
    </ol>
  );
}

interface PieceWordsProps {
  readonly numbered: NumberedPiece;
  readonly isPinned: boolean;
  readonly isBroken: boolean;
}

function PieceWords({ numbered, isPinned, isBroken }: PieceWordsProps) {
  const { lengthUnits } = useSettings();
  const { piece, direction, handle, spout } = numbered;
  const arms = [handle && `handle to ${handle}`, spout && `spout to ${spout}`].filter(Boolean).join(", ");
  return (
    <span className={styles.words}>
      <span>
        {piece.ware.name}
        {isPinned && (
          <span className={styles.pinned}>
            <PinIcon size={16} /> pinned
          </span>
        )}
      </span>
      <span className={styles.where}>
        {whereWords(piece, direction, lengthUnits)}
        {arms && `; ${arms}`}
      </span>
      {isBroken && <Sign kind="breaks">Breaks a rule</Sign>}
    </span>
  );
}
