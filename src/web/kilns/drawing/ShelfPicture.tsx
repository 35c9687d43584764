import type { Shelf } from "../../../kiln/furniture.ts";
import type { KilnFile } from "../../../kiln/kiln.ts";
import type { FitWords } from "../kiln-words.ts";
import type { ShelfFit } from "../shelf-fit.ts";
import styles from "./Drawing.module.css";
import { frameOf, planBox } from "./frame.ts";
import { Walls } from "./PlanDrawing.tsx";
import { ShelfOnFloor } from "./ShelfOnFloor.tsx";

/** A shelf in its kiln, small. */
export function ShelfPicture(props: { kiln: KilnFile; shelf: Shelf; fit: ShelfFit; verdict: FitWords["verdict"] }) {
  const frame = frameOf(props.kiln.chamber);
  return (
    <svg className={styles.drawing} viewBox={planBox(frame)} aria-hidden="true">
      <Walls kiln={props.kiln} frame={frame} />
      <ShelfOnFloor shelf={props.shelf} fit={props.fit} verdict={props.verdict} frame={frame} />
    </svg>
  );
}
