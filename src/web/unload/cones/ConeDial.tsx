import { type KeyboardEvent, type PointerEvent, useRef, useState } from "react";
import { AddIcon, CloseIcon, IconButton, RemoveIcon } from "../../parts/index.ts";
import { bendWords, DOWN_DEG, stepped } from "./bend-words.ts";
import styles from "./ConeDial.module.css";
import type { ShelfCone } from "./cone-set.ts";
import { bendOfTip, CONE_TALL, coneOutline, readable } from "./cone-shape.ts";

interface ConeDialProps {
  readonly cone: ShelfCone;
  /** As it was foretold; null where nothing was. */
  readonly foretoldDeg: number | null;
  /** Null: it was not seen after all. */
  readonly onSee: (bendDeg: number | null) => void;
}

const PART_WORDS = { guide: "Guide cone", firing: "Firing cone", guard: "Guard cone" } as const;

const BOX = { left: -14, right: 58, top: CONE_TALL + 8, bottom: -8 };

/** A witness cone, drawn; its tip is dragged to how far it bent, or stepped by the hours of a clock. */
export function ConeDial({ cone, foretoldDeg, onSee }: ConeDialProps) {
  const drawing = useRef<HTMLDivElement>(null);
  const [dragged, setDragged] = useState<number | null>(null);
  const seen = dragged ?? cone.bendDeg;
  const words = seen === null ? "not seen yet" : bendWords(seen);
  const name = `${cone.part === null ? "Cone" : PART_WORDS[cone.part]} ${cone.cone}${cone.place && `, ${cone.place}`}`;

  const bendAt = ({ clientX, clientY }: PointerEvent): number => {
    const box = drawing.current?.getBoundingClientRect();
    if (!box) return 0;
    const scale = (BOX.right - BOX.left) / box.width;
    return readable(bendOfTip(BOX.left + (clientX - box.left) * scale, BOX.top - (clientY - box.top) * scale));
  };
  const key = (event: KeyboardEvent) => {
    const now = cone.bendDeg ?? 0;
    const to = {
      ArrowRight: stepped(now, 1),
      ArrowDown: stepped(now, 1),
      ArrowLeft: stepped(now, -1),
      ArrowUp: stepped(now, -1),
      Home: 0,
      End: DOWN_DEG,
    }[event.key];
    if (event.key === "Delete" && cone.bendDeg !== null) onSee(null);
    else if (to !== undefined) onSee(event.shiftKey ? Math.min(90, Math.max(0, now + Math.sign(to - now) * 5)) : to);
    else return;
    event.preventDefault();
  };

  return (
    <div className={styles.cone}>
      <span className={styles.name}>
        <strong>{cone.cone}</strong> {cone.part ?? ""}
      </span>
      <div
        ref={drawing}
        className={styles.drawing}
        role="slider"
        tabIndex={0}
        aria-label={name}
        aria-valuemin={0}
        aria-valuemax={DOWN_DEG}
        aria-valuenow={seen ?? 0}
        aria-valuetext={words}
        onKeyDown={key}
        onPointerDown={(event) => {
          event.currentTarget.setPointerCapture(event.pointerId);
          setDragged(bendAt(event));
        }}
        onPointerMove={(event) => {
          if (dragged !== null) setDragged(bendAt(event));
        }}
        onPointerUp={() => {
          if (dragged !== null) onSee(dragged);
          setDragged(null);
        }}
        onPointerCancel={() => setDragged(null)}
        // A drag of the cone is no swipe to the next shelf.
        onTouchStart={(event) => event.stopPropagation()}
        onTouchEnd={(event) => event.stopPropagation()}
      >
        <svg
          viewBox={`${BOX.left} ${-BOX.top} ${BOX.right - BOX.left} ${BOX.top - BOX.bottom}`}
          aria-hidden="true"
          focusable="false"
        >
          <rect className={styles.plaque} x={BOX.left + 2} y={0} width={BOX.right - BOX.left - 4} height={6} rx={2} />
          {foretoldDeg !== null && <polygon className={styles.foretold} points={points(foretoldDeg)} />}
          <polygon className={seen === null ? styles.unseen : styles.seen} points={points(seen ?? 0)} />
        </svg>
      </div>
      <span className={styles.words} data-seen={seen !== null}>
        {words}
      </span>
      {foretoldDeg !== null && <span className={styles.told}>foretold: {bendWords(foretoldDeg)}</span>}
      <span className={styles.steps}>
        <IconButton
          look="plain"
          label={`${name}: less bent`}
          icon={<RemoveIcon />}
          isDisabled={cone.bendDeg !== null && cone.bendDeg <= 0}
          onPress={() => onSee(stepped(cone.bendDeg ?? 0, -1))}
        />
        <IconButton
          look="plain"
          label={`${name}: more bent`}
          icon={<AddIcon />}
          isDisabled={cone.bendDeg !== null && cone.bendDeg >= DOWN_DEG}
          onPress={() => onSee(stepped(cone.bendDeg ?? 0, 1))}
        />
      </span>
      {cone.bendDeg !== null && (
        <IconButton label={`${name}: not seen`} icon={<CloseIcon />} onPress={() => onSee(null)} />
      )}
    </div>
  );
}

const points = (bendDeg: number): string =>
  coneOutline(bendDeg)
    .map(([x, y]) => `${x.toFixed(1)},${(-y).toFixed(1)}`)
    .join(" ");
