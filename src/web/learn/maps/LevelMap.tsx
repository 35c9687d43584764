import { useId } from "react";
import { chamberRegion, edgeDistanceMm } from "../../../kiln/convex-region.ts";
import type { KilnFile } from "../../../kiln/kiln.ts";
import { radians } from "../../../measures/angle.ts";
import type { PlaceTally } from "../../../studio/firings/kiln-maps.ts";
import { regionPath } from "../../kilns/drawing/region-path.ts";
import styles from "./Maps.module.css";
import { PART_WORDS, tallyWords } from "./map-words.ts";

interface LevelMapProps {
  readonly kiln: KilnFile;
  /** One height's five places. */
  readonly places: readonly PlaceTally[];
  readonly label: string;
}

/** Fewer pieces than this tell nothing yet, and are not hatched. */
const FEW = 4;
/** As `kilnMaps` parts a shelf: within this share of the way to the wall a piece stands in the middle. */
const MIDDLE = 0.45;
/** Past these shares of seconds and losses a place is hatched once, and crosswise. */
const SOME = 0.1;
const MANY = 0.3;

/** A third of the kiln from above: in its middle and its four quarters how many pieces stood, and how many went wrong. */
export function LevelMap({ kiln, places, label }: LevelMapProps) {
  const id = useId();
  const region = chamberRegion(kiln.chamber);
  const path = regionPath(region);
  const reach = Math.max(...[0, 45, 90, 135].map((angle) => edgeDistanceMm(region, angle)));
  const narrow = Math.min(edgeDistanceMm(region, 0), edgeDistanceMm(region, 90));
  const letter = narrow * 0.16;
  const room = reach * 1.06;
  return (
    <svg className={styles.map} viewBox={`${-room} ${-room} ${2 * room} ${2 * room}`} role="img" aria-label={label}>
      <defs>
        <clipPath id={`${id}-inside`}>
          <path d={path} />
        </clipPath>
        <Hatch id={`${id}-some`} size={narrow * 0.09} />
        <Hatch id={`${id}-many`} size={narrow * 0.07} isCrossed />
      </defs>
      <g clipPath={`url(#${id}-inside)`}>
        {[...places].sort(middleLast).map((place) => (
          <Zone key={place.part} place={place} id={id} reach={reach * 1.5} middle={narrow * MIDDLE} />
        ))}
      </g>
      <path className={styles.wall} d={path} strokeWidth={narrow * 0.03} />
      {places.map((place) => {
        const away = place.part === "middle" ? 0 : edgeDistanceMm(region, Number.parseFloat(place.part)) * 0.71;
        const angle = radians(place.part === "middle" ? 0 : Number.parseFloat(place.part));
        return (
          <Figures
            key={place.part}
            place={place}
            x={away * Math.cos(angle)}
            y={-away * Math.sin(angle)}
            letter={letter}
          />
        );
      })}
    </svg>
  );
}

/** The middle lies over the quarters' tips. */
const middleLast = (a: PlaceTally, b: PlaceTally): number => Number(a.part === "middle") - Number(b.part === "middle");

interface ZoneProps {
  readonly place: PlaceTally;
  readonly id: string;
  readonly reach: number;
  readonly middle: number;
}

function Zone({ place: { part, pieces, badShare, ...tally }, id, reach, middle }: ZoneProps) {
  const shape = part === "middle" ? ring(middle) : wedge(Number.parseFloat(part), reach);
  const isBad = pieces >= FEW && badShare > SOME;
  return (
    <g>
      <title>{`${PART_WORDS[part]}: ${tallyWords({ pieces, badShare, ...tally })}`}</title>
      <path className={isBad ? styles.bad : styles.zone} d={shape} />
      {isBad && <path d={shape} fill={`url(#${id}-${badShare > MANY ? "many" : "some"})`} />}
      <path className={styles.edge} d={shape} />
    </g>
  );
}

/** A quarter of the plan around the angle it is centred on, its tip at the axis; the middle is drawn over it. */
function wedge(angleDeg: number, reach: number): string {
  const corner = (deg: number): string => `${reach * Math.cos(radians(deg))} ${-reach * Math.sin(radians(deg))}`;
  return `M0 0L${corner(angleDeg - 45)}L${corner(angleDeg + 45)}Z`;
}

const ring = (radius: number): string =>
  `M${-radius} 0A${radius} ${radius} 0 1 0 ${radius} 0A${radius} ${radius} 0 1 0 ${-radius} 0Z`;

interface FiguresProps {
  readonly place: PlaceTally;
  readonly x: number;
  readonly y: number;
  readonly letter: number;
}

/** How many pieces; under it a cross with how many were lost, a triangle with how many were seconds. */
function Figures({ place: { pieces, second, lost }, x, y, letter }: FiguresProps) {
  const bad = [lost > 0 ? `✕${lost}` : "", second > 0 ? `△${second}` : ""].filter(Boolean).join(" ");
  return (
    <g className={styles.figures} textAnchor="middle" strokeWidth={letter * 0.28}>
      <text x={x} y={bad === "" ? y + letter * 0.36 : y - letter * 0.1} fontSize={letter}>
        {pieces === 0 ? "–" : pieces}
      </text>
      {bad !== "" && (
        <text className={styles.wrong} x={x} y={y + letter * 0.95} fontSize={letter * 0.92}>
          {bad}
        </text>
      )}
    </g>
  );
}

interface HatchProps {
  readonly id: string;
  readonly size: number;
  readonly isCrossed?: boolean;
}

const Hatch = ({ id, size, isCrossed = false }: HatchProps) => (
  <pattern id={id} width={size} height={size} patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
    <path
      className={styles.hatch}
      strokeWidth={size * 0.12}
      d={isCrossed ? `M0 0H${size}M0 0V${size}` : `M0 0H${size}`}
    />
  </pattern>
);
