import type { KilnFile, Probe, Spyhole } from "../../../kiln/kiln.ts";
import { probeLine, spyholeMouth } from "../../../kiln/wall-fittings.ts";
import { formatLength, type LengthUnits } from "../../../measures/length.ts";
import { draggedHeightMm } from "../wall-drag.ts";
import styles from "./Drawing.module.css";
import { type Fitting, fittingOf, fittingsOf, isSame, type WallPlace } from "./fitting.ts";
import { type Frame, frameOf, sideBox } from "./frame.ts";
import { Handle } from "./Handle.tsx";

interface SideDrawingProps {
  readonly kiln: KilnFile;
  readonly units: LengthUnits;
  readonly selected: Fitting | null;
  readonly onSelect: (fitting: Fitting) => void;
  readonly onMove: (fitting: Fitting, to: Partial<WallPlace>) => void;
}

/** The kiln from the front, cut open: its depth, and how high things sit in its wall, to be dragged up and down. */
export function SideDrawing({ kiln, units, selected, onSelect, onMove }: SideDrawingProps) {
  const frame = frameOf(kiln.chamber);
  const marked = selected && fittingOf(kiln, selected);
  return (
    // biome-ignore lint/a11y/useSemanticElements: a drawing cannot be a fieldset
    <svg className={styles.drawing} viewBox={sideBox(frame)} role="group" aria-label="The kiln from the front">
      <CutWalls frame={frame} />
      <DepthMeasure frame={frame} units={units} />
      {marked && <HeightMeasure frame={frame} units={units} kiln={kiln} thing={marked} />}
      {fittingsOf(kiln).map((fitting) => {
        const thing = fittingOf(kiln, fitting) as Probe | Spyhole;
        return (
          <Handle
            key={`${fitting.kind}${fitting.index}`}
            frame={frame}
            x={wallX(kiln, thing)}
            y={-thing.heightMm}
            selected={isSame(selected, fitting)}
            label={`${thing.name}, height above the floor`}
            value={Math.round(thing.heightMm)}
            valueText={`${formatLength(thing.heightMm, units)} above the floor`}
            min={0}
            max={Math.round(frame.depthMm)}
            onFocus={() => onSelect(fitting)}
            onGrab={() => onSelect(fitting)}
            onDrag={(_, y) => onMove(fitting, { heightMm: draggedHeightMm(-y, frame.depthMm, units === "inches") })}
            onKey={(turnDeg, upMm) => onMove(fitting, { heightMm: thing.heightMm + upMm - 5 * Math.sign(turnDeg) })}
          >
            <FittingFromFront kiln={kiln} thing={thing} frame={frame} />
          </Handle>
        );
      })}
    </svg>
  );
}

const wallX = (kiln: KilnFile, thing: Probe | Spyhole): number =>
  "reachMm" in thing ? probeLine(kiln.chamber, thing).wallX : spyholeMouth(kiln.chamber, thing).x;

/** Walls, floor and lid, cut through. */
export function CutWalls({ frame }: { frame: Frame }) {
  const { reachX, depthMm, wall, letter } = frame;
  return (
    <>
      <rect
        className={styles.wall}
        x={-reachX - wall}
        y={-depthMm - wall}
        width={2 * (reachX + wall)}
        height={depthMm + 2 * wall}
        rx={letter * 0.3}
      />
      <rect
        className={styles.inside}
        x={-reachX}
        y={-depthMm}
        width={2 * reachX}
        height={depthMm}
        strokeWidth={letter * 0.06}
      />
      <line
        className={styles.measure}
        x1={-reachX - wall}
        x2={reachX + wall}
        y1={-depthMm}
        y2={-depthMm}
        strokeWidth={letter * 0.08}
      />
    </>
  );
}

/** A probe or spyhole from the front. */
export function FittingFromFront({ kiln, thing, frame }: { kiln: KilnFile; thing: Probe | Spyhole; frame: Frame }) {
  const y = -thing.heightMm;
  if ("reachMm" in thing) {
    const line = probeLine(kiln.chamber, thing);
    const far = Math.hypot(line.wallX, line.wallY) || 1;
    const outX = line.wallX * (1 + (frame.wall * 1.15) / far);
    const width = frame.letter * 0.24;
    return (
      <>
        <line className={styles.probe} x1={outX} y1={y} x2={line.tipX} y2={y} strokeWidth={width} />
        <circle className={styles.tip} cx={line.tipX} cy={y} r={width * 0.9} />
      </>
    );
  }
  const mouth = spyholeMouth(kiln.chamber, thing);
  const high = Math.max(mouth.radiusMm, frame.letter * 0.36);
  const wide = Math.max(high * Math.abs(mouth.ny), frame.letter * 0.12);
  return (
    <ellipse
      className={thing.open ? styles.hole : styles.plug}
      cx={mouth.x}
      cy={y}
      rx={wide}
      ry={high}
      strokeWidth={frame.letter * 0.07}
    />
  );
}

/** The depth, along the left wall's inside. */
function DepthMeasure({ frame, units }: { frame: Frame; units: LengthUnits }) {
  const { reachX, depthMm, letter, wall } = frame;
  const x = -reachX + letter * 1.1;
  return (
    <>
      <path
        className={styles.measure}
        d={`M ${x - letter * 0.4} ${-depthMm} h ${letter * 0.8} M ${x} ${-depthMm} V 0 M ${x - letter * 0.4} 0 h ${letter * 0.8}`}
        strokeWidth={letter * 0.05}
      />
      <text x={x + letter * 0.4} y={-depthMm / 2} fontSize={letter} dominantBaseline="central">
        {formatLength(depthMm, units)}
      </text>
      <text x={0} y={wall + letter * 1.1} fontSize={letter} textAnchor="middle" dominantBaseline="central">
        {formatLength(2 * reachX, units)}
      </text>
    </>
  );
}

/** The selected fitting's height, from the floor up to it, drawn on the side of the middle it does not reach into. */
function HeightMeasure(props: { frame: Frame; units: LengthUnits; kiln: KilnFile; thing: Probe | Spyhole }) {
  const { frame, units, kiln, thing } = props;
  const { letter } = frame;
  const at = wallX(kiln, thing);
  const x =
    at > 0 ? Math.min(at - letter, frame.reachX - letter * 1.2) : Math.max(at + letter, -frame.reachX + letter * 3.8);
  const words = `${formatLength(thing.heightMm, units)} up`;
  return (
    <>
      <path
        className={styles.measure}
        d={`M ${at} ${-thing.heightMm} H ${x} V 0`}
        strokeWidth={letter * 0.05}
        strokeDasharray={`${letter * 0.25} ${letter * 0.18}`}
      />
      <text
        className={styles.name}
        x={x + (at > 0 ? -letter * 0.3 : letter * 0.3)}
        y={-Math.max(thing.heightMm / 2, letter * 0.7)}
        fontSize={letter}
        strokeWidth={letter * 0.2}
        textAnchor={at > 0 ? "end" : "start"}
        dominantBaseline="central"
      >
        {words}
      </text>
    </>
  );
}
