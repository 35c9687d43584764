import type { KilnFile } from "../../../kiln/kiln.ts";
import styles from "./Drawing.module.css";
import { fittingOf, fittingsOf } from "./fitting.ts";
import { frameOf, planBox } from "./frame.ts";
import { FittingFromAbove, Walls } from "./PlanDrawing.tsx";

/** A small still picture of a kiln from above, for a card. */
export function KilnPicture({ kiln }: { kiln: KilnFile }) {
  const frame = frameOf(kiln.chamber);
  return (
    <svg className={styles.drawing} viewBox={planBox(frame)} aria-hidden="true">
      <Walls kiln={kiln} frame={frame} />
      {fittingsOf(kiln).map((fitting) => {
        const thing = fittingOf(kiln, fitting);
        return (
          thing && <FittingFromAbove key={`${fitting.kind}${fitting.index}`} kiln={kiln} thing={thing} frame={frame} />
        );
      })}
    </svg>
  );
}
