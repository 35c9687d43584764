import { placedRegion, shelfRegion } from "../../../kiln/convex-region.ts";
import type { Shelf } from "../../../kiln/furniture.ts";
import type { FitWords } from "../kiln-words.ts";
import type { ShelfFit } from "../shelf-fit.ts";
import styles from "./Drawing.module.css";
import type { Frame } from "./frame.ts";
import { regionPath } from "./region-path.ts";

/** A shelf where it lies best in the chamber, with its other half where it has one. */
export function ShelfOnFloor(props: { shelf: Shelf; fit: ShelfFit; verdict: FitWords["verdict"]; frame: Frame }) {
  const { shelf, fit, verdict, frame } = props;
  const turns = fit.paired ? [fit.turnDeg, fit.turnDeg + 180] : [fit.turnDeg];
  return turns.map((turn) => (
    <path
      key={turn}
      className={styles[verdict]}
      d={regionPath(placedRegion(shelfRegion(shelf), fit.xMm, fit.yMm, turn))}
      strokeWidth={frame.letter * 0.12}
    />
  ));
}
