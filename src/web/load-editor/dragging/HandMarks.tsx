import { useEffect, useRef } from "react";
import type { Scene } from "../../../loading/checker/scene.ts";
import { wareSolid } from "../../../loading/solids/ware-solid.ts";
import type { LengthUnits } from "../../../measures/length.ts";
import type { Watched } from "../../studio/watched.ts";
import { ClearanceRing } from "../drawing/ClearanceRing.tsx";
import { type DimensionLine, dimensionLines, MOST_LINES } from "../drawing/dimension-lines.ts";
import type { KindSign } from "../drawing/kind-signs.ts";
import marks from "../drawing/Marks.module.css";

import { PieceFromAbove } from "../drawing/PieceFromAbove.tsx";
import styles from "./EditorDrawing.module.css";
import type { Hand, HandState } from "./hand.ts";

interface HandMarksProps {
  readonly hand: Hand;
  readonly live: Watched<HandState | null>;
  readonly scene: Scene;
  readonly gapMm: number;
  readonly units: LengthUnits;
  readonly sign: KindSign | undefined;
  readonly number: number | null;
  readonly letter: number;
  /** How much nearer the drawing is looked at: the distances stay as large on the screen as they are. */
  readonly times: number;
  /** It is carried out of the drawing, over what it is to be put on: it is drawn small, so that one sees where. */
  readonly isAway: boolean;
}

/**
 * The piece in her hand with the room round it and lines to what is nearest. It follows the hand past
 * React: each move sets a few attributes and no more.
 */
export function HandMarks({ hand, live, scene, gapMm, units, sign, number, letter, times, isAway }: HandMarksProps) {
  const piece = useRef<SVGGElement>(null);
  const lines = useRef<SVGGElement>(null);
  useEffect(() => {
    const show = (): void => {
      const state = live.get();
      if (state === null || piece.current === null) return;
      const { spot, answer } = { spot: state.spot, answer: state };
      const small = isAway ? " scale(0.35)" : "";
      piece.current.setAttribute("transform", `translate(${spot.xMm} ${-spot.yMm})${small}`);
      for (const turned of piece.current.querySelectorAll("[data-turn]"))
        turned.setAttribute("transform", `rotate(${-spot.turnDeg})`);
      piece.current.dataset.answer = answer.broken.length > 0 ? "breaks" : "keeps";
      showLines(state);
    };
    const showLines = (state: HandState): void => {
      const { xMm, yMm, turnDeg } = state.spot;
      const solid = wareSolid(hand.ware, xMm, yMm, turnDeg, scene.shelves[state.level]?.topMm ?? 0);
      const shown = dimensionLines(scene, solid, state.level, state, units);
      for (let i = 0; i < MOST_LINES; i++) setLine(lines.current?.children[i], shown[i], letter / times);
    };
    show();
    return live.subscribe(show);
  }, [hand, live, scene, letter, times, units, isAway]);
  return (
    <g className={isAway ? `${styles.hand} ${styles.away}` : styles.hand}>
      <g ref={piece}>
        <g data-turn="">
          <ClearanceRing ware={hand.ware} gapMm={gapMm} />
        </g>
        <g className={marks.chosen}>
          <PieceFromAbove ware={hand.ware} turnDeg={0} number={number} sign={sign} letter={letter} />
        </g>
      </g>
      <g ref={lines}>
        {Array.from({ length: MOST_LINES }, (_, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: so many lines, all alike
          <g key={i} visibility="hidden">
            <path className={styles.measure} strokeWidth={2 / times} />
            <text className={styles.measureWords} fontSize={letter / times} strokeWidth={5 / times} />
          </g>
        ))}
      </g>
    </g>
  );
}

/** Puts a dimension line where it belongs: a stroke with a tick at either end, its words beyond the far one. */
function setLine(group: Element | undefined, line: DimensionLine | undefined, letter: number): void {
  group?.setAttribute("visibility", line ? "visible" : "hidden");
  const [stroke, words] = group?.children ?? [];
  if (!group || !line || !stroke || !words) return;
  const { x1, y1, x2, y2, dx, dy } = line;
  const [tickX, tickY] = [-dy * letter * 0.35, dx * letter * 0.35];
  const tick = (x: number, y: number): string => `M${x - tickX} ${y - tickY}L${x + tickX} ${y + tickY}`;
  stroke.setAttribute("d", `${tick(x1, y1)}M${x1} ${y1}L${x2} ${y2}${tick(x2, y2)}`);
  // The words stand beyond whichever end lies farther out.
  const isOut = (x2 - x1) * dx + (y2 - y1) * dy >= 0;
  const wide = line.words.length * letter * 0.27;
  words.setAttribute("x", String((isOut ? x2 : x1) + dx * (letter * 0.6 + wide)));
  words.setAttribute("y", String((isOut ? y2 : y1) + dy * letter * 1.1));
  words.textContent = line.words;
  (group as SVGGElement).dataset.short = String(line.isShort);
}
