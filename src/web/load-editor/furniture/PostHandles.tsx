import { type KeyboardEvent, type ReactNode, useMemo, useRef, useState } from "react";
import type { Broken } from "../../../loading/checker/check-plan.ts";
import { moveColumn, movePost } from "../../../loading/editing/edit-levels.ts";
import type { Edited } from "../../../loading/editing/open-plan.ts";
import type { LoadPlan } from "../../../loading/load-plan.ts";
import type { LoadRequest } from "../../../loading/load-request.ts";
import { degrees } from "../../../measures/angle.ts";
import { formatLength, type LengthUnits } from "../../../measures/length.ts";
import { clockText } from "../../../sheets/clock-direction.ts";
import { uprightMark, widestPart } from "../../../sheets/drawing/outlines.ts";
import type { Frame } from "../../kilns/drawing/frame.ts";
import { useSettings } from "../../studio/hooks.ts";
import { useWatched } from "../../studio/watched.ts";
import { drawnLoad } from "../drawing/drawn-load.ts";
import { Mark, PLAN } from "../drawing/PieceFromAbove.tsx";
import { holdingWords } from "./furniture-words.ts";
import styles from "./Handles.module.css";
import { newBreaks } from "./new-breaks.ts";
import { postsAlone } from "./posts-alone.ts";
import { useHandle } from "./use-handle.ts";
import { useLastly } from "./use-lastly.ts";
import { useThrottled } from "./use-throttled.ts";

export interface PostHandlesProps {
  readonly request: LoadRequest;
  readonly plan: LoadPlan;
  readonly level: number;
  readonly frame: Frame;
  readonly onEdit: (edited: Edited, note: string) => void;
}

const ANSWER_EVERY_MS = 60;
const KEY_PAUSE_MS = 500;
const STEP_MM = 5;
const SMALL_STEP_MM = 1;

const KEYS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowRight: [1, 0],
  ArrowLeft: [-1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};

/** The posts under a level, to be dragged or moved with the arrow keys; whole columns, or one post where she says so. */
export function PostHandles(props: PostHandlesProps) {
  const level = drawnLoad(props.request, props.plan).levels[props.level];
  return (
    <g>
      {level?.postsUnder.map((post) => (
        <PostHandle key={post.name} {...props} post={post.post} x={post.x} y={post.y}>
          <g transform={`translate(${-post.x} ${post.y})`}>
            <Mark node={uprightMark(widestPart(post.stack), PLAN, {})} name={styles.post} />
          </g>
        </PostHandle>
      ))}
    </g>
  );
}

interface PostHandleProps extends PostHandlesProps {
  readonly post: number;
  readonly x: number;
  readonly y: number;
  /** The post about its own axis. */
  readonly children: ReactNode;
}

function PostHandle(props: PostHandleProps) {
  const { request, plan, level, frame, onEdit, post, children } = props;
  const { lengthUnits } = useSettings();
  const isAlone = useWatched(postsAlone);
  const [held, setHeld] = useState<{ readonly x: number; readonly y: number } | null>(null);
  const breaks = useThrottled<readonly Broken[]>(ANSWER_EVERY_MS);
  const askBroken = useMemo(() => newBreaks(request, plan), [request, plan]);
  const pause = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  const { x, y } = held ?? props;
  const edited = (at: { readonly x: number; readonly y: number }): Edited =>
    (isAlone ? movePost : moveColumn)(request, plan, level, post, tenth(at.x), tenth(at.y));
  const hold = (at: { readonly x: number; readonly y: number }) => {
    setHeld(at);
    breaks.ask(() => askBroken(edited(at).plan));
  };
  const letGo = () => {
    clearTimeout(pause.current);
    setHeld(null);
    breaks.forget();
  };
  const setDown = (at = held) => {
    letGo();
    if (!at || (tenth(at.x) === tenth(props.x) && tenth(at.y) === tenth(props.y))) return;
    onEdit(edited(at), isAlone ? `moved post ${post + 1} under level ${level + 1}` : "moved a column of posts");
  };
  useLastly(() => held && setDown());
  const grip = useHandle({
    x,
    y: -y,
    onDrag: (atX, atY) => hold({ x: atX, y: -atY }),
    onDrop: () => setDown(),
    onCancel: letGo,
  });
  const pressed = (event: KeyboardEvent) => {
    if (event.key === "Escape" && held) {
      event.stopPropagation();
      letGo();
      return;
    }
    const way = KEYS[event.key];
    if (!way) return;
    event.preventDefault();
    const step = event.shiftKey ? SMALL_STEP_MM : STEP_MM;
    const at = { x: x + way[0] * step, y: y + way[1] * step };
    hold(at);
    // Several steps in a row are one change.
    clearTimeout(pause.current);
    pause.current = setTimeout(() => setDown(at), KEY_PAUSE_MS);
  };
  const worst = breaks.answer?.[0];
  return (
    // biome-ignore lint/a11y/useSemanticElements: a part of a drawing cannot be a button
    <g
      {...grip}
      role="button"
      tabIndex={0}
      className={styles.handle}
      data-answer={held ? (worst ? "breaks" : "keeps") : undefined}
      aria-label={`Post ${post + 1} under level ${level + 1}, ${whereWords(x, y, lengthUnits)}. ${held ? holdingWords(breaks.answer) : "Arrow keys move it"}`}
      transform={`translate(${x} ${-y})`}
      onKeyDown={pressed}
      onBlur={() => held && setDown()}
    >
      <circle className={styles.finger} r={frame.finger} />
      {children}
      <text className={styles.number} fontSize={frame.letter * 0.8}>
        {post + 1}
      </text>
      {held && (
        <text
          className={worst ? styles.breaks : styles.keeps}
          x={x > frame.reachX * 0.4 ? frame.finger : x < -frame.reachX * 0.4 ? -frame.finger : 0}
          y={y > 0 ? frame.finger * 0.9 : -frame.finger * 0.9}
          textAnchor={x > frame.reachX * 0.4 ? "end" : x < -frame.reachX * 0.4 ? "start" : "middle"}
          fontSize={frame.letter * 0.8}
        >
          {holdingWords(breaks.answer)}
        </text>
      )}
    </g>
  );
}

const whereWords = (x: number, y: number, units: LengthUnits): string =>
  `${clockText(degrees(Math.atan2(y, x)))}, ${formatLength(Math.hypot(x, y), units)} from the middle`;

const tenth = (mm: number): number => Math.round(mm * 10) / 10;
