import { memo, useMemo } from "react";
import type { LoadPlan } from "../../../loading/load-plan.ts";
import type { LoadRequest } from "../../../loading/load-request.ts";
import { type Place, placeKey } from "../../../studio/loads/places.ts";
import base from "../../kilns/drawing/Drawing.module.css";
import { planBox } from "../../kilns/drawing/frame.ts";
import { drawnLoad } from "./drawn-load.ts";
import { kindSigns } from "./kind-signs.ts";
import { LevelGround, lowestRimFirst, Standing, signOf } from "./LevelMarks.tsx";
import { levelFrame } from "./level-frame.ts";
import styles from "./Marks.module.css";
import { PieceFromAbove } from "./PieceFromAbove.tsx";

export interface LevelViewProps {
  readonly request: LoadRequest;
  readonly plan: LoadPlan;
  /** The level's index in the plan. */
  readonly level: number;
  /** Pieces shown as chosen. */
  readonly marked?: readonly Place[];
  readonly onPress?: (place: Place) => void;
  /** What it shows, for who cannot see it. */
  readonly label?: string;
}

/** One level from above, to be looked at: every piece in its outline with its number as on the printed sheet. */
export const LevelView = memo(function LevelView(props: LevelViewProps) {
  const { request, plan, level: index, marked = [], onPress, label } = props;
  const load = drawnLoad(request, plan);
  const frame = levelFrame(request.kiln.chamber);
  const signs = useMemo(() => kindSigns(request.ware), [request]);
  const level = load.levels[index] ?? null;
  const chosen = new Set(marked.map(placeKey));
  const pieces = level?.pieces ?? [];
  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: pressing a piece is a short way; whoever uses it offers a list as well.
    <svg
      className={base.drawing}
      viewBox={planBox(frame)}
      role="img"
      aria-label={label ?? `Level ${index + 1} from above, ${pieces.length} pieces`}
      onClick={(event) => {
        const key = (event.target as Element).closest("[data-place]")?.getAttribute("data-place");
        const found = pieces.find(({ piece }) => placeKey(piece) === key)?.piece;
        if (found) onPress?.({ level: found.level, placement: found.placement });
      }}
    >
      <LevelGround load={load} level={level} frame={frame} />
      {lowestRimFirst(pieces).map((numbered) => (
        <Standing key={placeKey(numbered.piece)} numbered={numbered}>
          <title>{numbered.piece.ware.name}</title>
          <g className={chosen.has(placeKey(numbered.piece)) ? styles.chosen : undefined}>
            <PieceFromAbove
              ware={numbered.piece.ware}
              turnDeg={numbered.turnDeg}
              number={numbered.number}
              sign={signOf(signs, numbered)}
              letter={frame.letter}
            />
          </g>
        </Standing>
      ))}
    </svg>
  );
});
