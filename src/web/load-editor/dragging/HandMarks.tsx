import { useEffect, useRef } from "react";
import type { Scene } from "../../../loading/checker/scene.ts";
import { nearestPoints } from "../../../loading/editing/nearest-points.ts";
import { wareSolid } from "../../../loading/solids/ware-solid.ts";
import type { LengthUnits } from "../../../measures/length.ts";
import { formatLength } from "../../../measures/length.ts";
import type { Watched } from "../../studio/watched.ts";
import { ClearanceRing } from "../drawing/ClearanceRing.tsx";
import type { KindSign } from "../drawing/kind-signs.ts";
import marks from "../drawing/Marks.module.css";

import { PieceFromAbove } from "../drawing/PieceFromAbove.tsx";
import { whatMatters } from "../words/answer-words.ts";
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
}

/**
 * The piece in her hand with the room round it and a line to the nearest thing that matters. It follows the hand past
 * React: each move sets a few attributes and no more.
 */
export function HandMarks({ hand, live, scene, gapMm, units, sign, number, letter }: HandMarksProps) {
  const piece = useRef<SVGGElement>(null);
  const line = useRef<SVGLineElement>(null);
  const words = useRef<SVGTextElement>(null);
  useEffect(() => {
    const show = (): void => {
      const state = live.get();
      if (state === null || piece.current === null) return;
      const { spot, answer } = { spot: state.spot, answer: state };
      piece.current.setAttribute("transform", `translate(${spot.xMm} ${-spot.yMm})`);
      for (const turned of piece.current.querySelectorAll("[data-turn]"))
        turned.setAttribute("transform", `rotate(${-spot.turnDeg})`);
      piece.current.dataset.answer = answer.broken.length > 0 ? "breaks" : "keeps";
      showLine(state);
    };
    const showLine = ({ near, spot, level }: HandState): void => {
      const matters = whatMatters(near);
      const topMm = scene.shelves[level]?.topMm ?? 0;
      const solid = wareSolid(hand.ware, spot.xMm, spot.yMm, spot.turnDeg, topMm);
      const ends = matters && nearestPoints(scene, solid, matters);
      const isShown = matters !== null && ends !== null && matters.distanceMm > 0.05;
      line.current?.setAttribute("visibility", isShown ? "visible" : "hidden");
      words.current?.setAttribute("visibility", isShown ? "visible" : "hidden");
      if (!isShown) return;
      line.current?.setAttribute("x1", String(ends.x1));
      line.current?.setAttribute("y1", String(-ends.y1));
      line.current?.setAttribute("x2", String(ends.x2));
      line.current?.setAttribute("y2", String(-ends.y2));
      if (!words.current) return;
      // Beside the line's far end, away from the piece.
      const far = Math.hypot(ends.x2 - spot.xMm, ends.y2 - spot.yMm) || 1;
      const [dx, dy] = [(ends.x2 - spot.xMm) / far, (ends.y2 - spot.yMm) / far];
      words.current.setAttribute("x", String(ends.x2 + dx * letter * 1.3));
      words.current.setAttribute("y", String(-(ends.y2 + dy * letter * 1.0)));
      words.current.textContent = formatLength(Math.max(0, matters.distanceMm), units);
    };
    show();
    return live.subscribe(show);
  }, [hand, live, scene, letter, units]);
  return (
    <g className={styles.hand}>
      <g ref={piece}>
        <g data-turn="">
          <ClearanceRing ware={hand.ware} gapMm={gapMm} />
        </g>
        <g className={marks.chosen}>
          <PieceFromAbove ware={hand.ware} turnDeg={0} number={number} sign={sign} letter={letter} />
        </g>
      </g>
      <line ref={line} className={styles.measure} visibility="hidden" />
      <text ref={words} className={styles.measureWords} fontSize={letter} visibility="hidden" />
    </g>
  );
}
