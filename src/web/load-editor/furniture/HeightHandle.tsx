import { type KeyboardEvent, useMemo, useRef, useState } from "react";
import type { Broken } from "../../../loading/checker/check-plan.ts";
import { setLevelHeight } from "../../../loading/editing/edit-levels.ts";
import { type LevelHeight, levelHeights } from "../../../loading/editing/level-heights.ts";
import type { Edited } from "../../../loading/editing/open-plan.ts";
import type { LoadPlan } from "../../../loading/load-plan.ts";
import type { LoadRequest } from "../../../loading/load-request.ts";
import { formatLength } from "../../../measures/length.ts";
import type { Frame } from "../../kilns/drawing/frame.ts";
import { useSettings } from "../../studio/hooks.ts";
import { holdingWords, stackWords } from "./furniture-words.ts";
import styles from "./Handles.module.css";
import { newBreaks } from "./new-breaks.ts";
import { useHandle } from "./use-handle.ts";
import { useLastly } from "./use-lastly.ts";
import { useThrottled } from "./use-throttled.ts";

export interface HeightHandleProps {
  readonly request: LoadRequest;
  readonly plan: LoadPlan;
  readonly level: number;
  readonly frame: Frame;
  readonly onEdit: (edited: Edited, note: string) => void;
}

const ANSWER_EVERY_MS = 60;
const KEY_PAUSE_MS = 600;

/** A grip beside the chosen level's shelf: pulls it up and down, to the heights the posts still free can make. */
export function HeightHandle({ request, plan, level, frame, onEdit }: HeightHandleProps) {
  const { lengthUnits } = useSettings();
  const heights = useMemo(() => levelHeights(request, plan, level), [request, plan, level]);
  const askBroken = useMemo(() => newBreaks(request, plan), [request, plan]);
  const [held, setHeld] = useState<LevelHeight | null>(null);
  const breaks = useThrottled<readonly Broken[]>(ANSWER_EVERY_MS);
  const pause = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  const topMm = plan.levels[level]?.topMm ?? 0;
  const { reachX, wall, letter, finger } = frame;
  const x = reachX + wall + letter * 0.95;

  const hold = (to: LevelHeight) => {
    if (to === held) return;
    setHeld(to);
    breaks.ask(() => askBroken(setLevelHeight(request, plan, level, to.heightsMm).plan));
  };
  const letGo = () => {
    clearTimeout(pause.current);
    setHeld(null);
    breaks.forget();
  };
  const setDown = (to = held) => {
    letGo();
    if (!to || Math.abs(to.topMm - topMm) < 0.5) return;
    const how = to.topMm > topMm ? "raised" : "lowered";
    onEdit(setLevelHeight(request, plan, level, to.heightsMm), `${how} level ${level + 1}`);
  };
  useLastly(() => held && setDown());
  const grip = useHandle({
    x,
    y: -topMm,
    onDrag: (_, y) => {
      const nearest = nearestHeight(heights, -y);
      if (nearest) hold(nearest);
    },
    onDrop: () => setDown(),
    onCancel: letGo,
  });
  const pressed = (event: KeyboardEvent) => {
    if (event.key === "Escape" && held) {
      event.stopPropagation();
      letGo();
      return;
    }
    const now = held?.topMm ?? topMm;
    const to =
      event.key === "ArrowUp"
        ? heights.find((each) => each.topMm > now + 0.5)
        : event.key === "ArrowDown"
          ? heights.findLast((each) => each.topMm < now - 0.5)
          : undefined;
    if (event.key === "ArrowUp" || event.key === "ArrowDown") event.preventDefault();
    if (!to) return;
    hold(to);
    clearTimeout(pause.current);
    pause.current = setTimeout(() => setDown(to), KEY_PAUSE_MS);
  };
  if (heights.length === 0) return null;
  const shown = held?.topMm ?? topMm;
  const isBroken = (breaks.answer?.length ?? 0) > 0;
  return (
    <>
      {held && (
        <g data-answer={isBroken ? "breaks" : "keeps"} className={styles.ghost}>
          {heights.map((each) => (
            <line
              key={each.topMm}
              className={styles.tick}
              x1={reachX - letter * 0.5}
              x2={reachX}
              y1={-each.topMm}
              y2={-each.topMm}
            />
          ))}
          <line className={styles.level} x1={-reachX} x2={reachX} y1={-held.topMm} y2={-held.topMm} />
          <text
            className={styles.words}
            x={reachX - letter * 0.7}
            y={-held.topMm - letter * 1.9}
            fontSize={letter * 1.15}
          >
            {formatLength(held.topMm, lengthUnits)} up, posts {stackWords(held.heightsMm, lengthUnits)}
          </text>
          <text
            className={isBroken ? styles.breaks : styles.keeps}
            x={reachX - letter * 0.7}
            y={-held.topMm - letter * 0.5}
            textAnchor="end"
            fontSize={letter * 1.15}
          >
            {holdingWords(breaks.answer)}
          </text>
        </g>
      )}
      <g
        {...grip}
        role="slider"
        tabIndex={0}
        className={styles.handle}
        aria-orientation="vertical"
        aria-label={`Height of level ${level + 1}`}
        aria-valuemin={Math.round(heights[0]?.topMm ?? 0)}
        aria-valuemax={Math.round(heights.at(-1)?.topMm ?? 0)}
        aria-valuenow={Math.round(shown)}
        aria-valuetext={
          held
            ? `${formatLength(held.topMm, lengthUnits)} up, ${holdingWords(breaks.answer)}`
            : `${formatLength(topMm, lengthUnits)} above the floor`
        }
        transform={`translate(${x} ${-shown})`}
        onKeyDown={pressed}
        onBlur={() => held && setDown()}
      >
        <circle className={styles.finger} r={finger * 1.3} />
        <circle className={styles.knob} r={letter * 0.8} />
        <path
          className={styles.arrows}
          d={`M0 ${-letter * 0.5}V${letter * 0.5}M${-letter * 0.24} ${-letter * 0.26}L0 ${-letter * 0.52}L${letter * 0.24} ${-letter * 0.26}M${-letter * 0.24} ${letter * 0.26}L0 ${letter * 0.52}L${letter * 0.24} ${letter * 0.26}`}
        />
      </g>
    </>
  );
}

function nearestHeight(heights: readonly LevelHeight[], topMm: number): LevelHeight | null {
  return heights.reduce<LevelHeight | null>(
    (best, each) => (best && Math.abs(best.topMm - topMm) <= Math.abs(each.topMm - topMm) ? best : each),
    null,
  );
}
