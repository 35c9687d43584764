import { type ReactNode, useRef } from "react";
import { chamberRegion } from "../../../kiln/convex-region.ts";
import type { KilnFile, Probe, Spyhole } from "../../../kiln/kiln.ts";
import { probeLine, spyholeMouth } from "../../../kiln/wall-fittings.ts";
import { wrapDegrees } from "../../../measures/angle.ts";
import { directionText } from "../direction.ts";
import { draggedAngleDeg } from "../wall-drag.ts";
import styles from "./Drawing.module.css";
import { type Fitting, fittingOf, fittingsOf, isSame, type WallPlace } from "./fitting.ts";
import { type Frame, frameOf, planBox } from "./frame.ts";
import { Handle } from "./Handle.tsx";
import { regionPath } from "./region-path.ts";

interface PlanDrawingProps {
  readonly kiln: KilnFile;
  readonly selected: Fitting | null;
  readonly onSelect: (fitting: Fitting) => void;
  readonly onMove: (fitting: Fitting, to: Partial<WallPlace>) => void;
  /** Drawn on the floor: a shelf, to see how it fits. */
  readonly children?: ReactNode;
}

/** The kiln from above: its wall, and what sticks through it, to be dragged round it. */
export function PlanDrawing({ kiln, selected, onSelect, onMove, children }: PlanDrawingProps) {
  const frame = frameOf(kiln.chamber);
  const grabbed = useRef<Fitting | null>(null);
  return (
    // biome-ignore lint/a11y/useSemanticElements: a drawing cannot be a fieldset
    <svg className={styles.drawing} viewBox={planBox(frame)} role="group" aria-label="The kiln from above">
      <Walls kiln={kiln} frame={frame} />
      {children}
      <Hours frame={frame} />
      {fittingsOf(kiln).map((fitting) => {
        const thing = fittingOf(kiln, fitting) as Probe | Spyhole;
        const { x, y } = wallMiddle(kiln, thing, frame);
        // Two one above the other look like one from above: the finger has the one that was chosen.
        const hand = selected && isOver(kiln, selected, thing, frame) ? selected : fitting;
        return (
          <Handle
            key={`${fitting.kind}${fitting.index}`}
            frame={frame}
            x={x}
            y={y}
            selected={isSame(selected, fitting)}
            label={`${thing.name}, where on the wall`}
            value={Math.round(wrapDegrees(90 - thing.angleDeg))}
            valueText={directionText(thing.angleDeg)}
            min={0}
            max={359}
            onFocus={() => onSelect(fitting)}
            onGrab={() => {
              grabbed.current = hand;
              onSelect(hand);
            }}
            onDrag={(dragX, dragY) => {
              const angleDeg = draggedAngleDeg(dragX, -dragY);
              if (angleDeg !== null) onMove(grabbed.current ?? fitting, { angleDeg });
            }}
            onKey={(turnDeg, upMm) => onMove(fitting, { angleDeg: thing.angleDeg + turnDeg + Math.sign(upMm) })}
          >
            <FittingFromAbove kiln={kiln} thing={thing} frame={frame} />
          </Handle>
        );
      })}
    </svg>
  );
}

/** The chamber's floor inside its wall, from above. */
export function Walls({ kiln, frame }: { kiln: KilnFile; frame: Frame }) {
  const path = regionPath(chamberRegion(kiln.chamber));
  return (
    <>
      <path className={styles.wall} d={path} strokeWidth={2 * frame.wall} />
      <path className={styles.inside} d={path} strokeWidth={frame.letter * 0.06} />
    </>
  );
}

/** A probe or spyhole from above. */
export function FittingFromAbove({ kiln, thing, frame }: { kiln: KilnFile; thing: Probe | Spyhole; frame: Frame }) {
  if ("reachMm" in thing) {
    const { wallX, wallY, tipX, tipY } = probeLine(kiln.chamber, thing);
    const far = Math.hypot(wallX, wallY) || 1;
    const out = 1 + (frame.wall * 1.15) / far;
    const width = frame.letter * 0.24;
    return (
      <>
        <line className={styles.probe} x1={wallX * out} y1={-wallY * out} x2={tipX} y2={-tipY} strokeWidth={width} />
        <circle className={styles.tip} cx={tipX} cy={-tipY} r={width * 0.9} />
      </>
    );
  }
  const { x, y, nx, ny, radiusMm } = spyholeMouth(kiln.chamber, thing);
  const half = Math.max(radiusMm, frame.letter * 0.28);
  const [sx, sy] = [-ny * half, nx * half];
  const corner = (along: number, out: number) => `${x + along * sx + nx * out} ${-(y + along * sy + ny * out)}`;
  const d = `M ${corner(1, 0)} L ${corner(-1, 0)} L ${corner(-1, frame.wall)} L ${corner(1, frame.wall)} Z`;
  return <path className={thing.open ? styles.hole : styles.plug} d={d} strokeWidth={frame.letter * 0.07} />;
}

function wallMiddle(kiln: KilnFile, thing: Probe | Spyhole, frame: Frame): { x: number; y: number } {
  const { x, y } =
    "reachMm" in thing
      ? (({ wallX, wallY }) => ({ x: wallX, y: wallY }))(probeLine(kiln.chamber, thing))
      : spyholeMouth(kiln.chamber, thing);
  const far = Math.hypot(x, y) || 1;
  const out = 1 + frame.wall / 2 / far;
  return { x: x * out, y: -y * out };
}

function isOver(kiln: KilnFile, selected: Fitting, thing: Probe | Spyhole, frame: Frame): boolean {
  const other = fittingOf(kiln, selected);
  if (!other) return false;
  const [a, b] = [wallMiddle(kiln, other, frame), wallMiddle(kiln, thing, frame)];
  return Math.hypot(a.x - b.x, a.y - b.y) < frame.finger / 2;
}

/** The hours round the plan. */
export function Hours({ frame }: { frame: Frame }) {
  const x = frame.reachX + frame.wall + frame.letter * 0.8;
  const y = frame.reachY + frame.wall + frame.letter * 0.8;
  const hours: [string, number, number][] = [
    ["12", 0, -y],
    ["3", x, 0],
    ["6", 0, y],
    ["9", -x, 0],
  ];
  return hours.map(([hour, atX, atY]) => (
    <text key={hour} x={atX} y={atY} fontSize={frame.letter} textAnchor="middle" dominantBaseline="central">
      {hour}
    </text>
  ));
}
