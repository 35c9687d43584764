import { useId } from "react";
import type { ElementWear } from "../../../studio/firings/element-wear.ts";
import styles from "../Upkeep.module.css";
import { wearFrame } from "./wear-frame.ts";

interface WearChartProps {
  readonly wear: ElementWear;
  /** Firings since the set was new, or first measured. */
  readonly now: number;
  readonly label: string;
}

const WIDTH = 520;
const HEIGHT = 220;
const LEFT = 52;
const TOP = 14;
const BOTTOM = 44;

/** Resistance over firings: the measurings, the line through them, carried on with its spread to the limit. */
export function WearChart({ wear, now, label }: WearChartProps) {
  const id = useId();
  const { lastFiring, topRise, riseAt } = wearFrame(wear, now);
  const lowRise = Math.min(0, ...wear.points.map(({ rise }) => rise));
  const x = (firings: number): number => LEFT + (firings / lastFiring) * (WIDTH - LEFT - 10);
  const y = (rise: number): number => TOP + ((topRise - rise) / (topRise - lowRise)) * (HEIGHT - TOP - BOTTOM);
  const { limit, remainingFirings: left, risePerFiring } = wear;
  const fan = left && left.expected > 0 ? spreadPath(left, now, riseAt(now), limit.rise, x, y) : null;
  return (
    <svg className={styles.chart} viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={label}>
      <clipPath id={id}>
        <rect x={LEFT} y={TOP} width={WIDTH - LEFT - 10} height={HEIGHT - TOP - BOTTOM} />
      </clipPath>
      <path className={styles.grid} d={`M${LEFT} ${y(0)}H${WIDTH - 10}`} />
      <text x={LEFT - 8} y={y(0)} dy="0.35em" textAnchor="end">
        0 %
      </text>
      <g clipPath={`url(#${id})`}>
        {fan && <path className={styles.spread} d={fan} />}
        {risePerFiring !== null && (
          <>
            <path className={styles.trend} d={`M${x(0)} ${y(riseAt(0))}L${x(now)} ${y(riseAt(now))}`} />
            <path
              className={styles.ahead}
              d={`M${x(now)} ${y(riseAt(now))}L${x(lastFiring)} ${y(riseAt(lastFiring))}`}
            />
          </>
        )}
      </g>
      <path className={styles.limit} d={`M${LEFT} ${y(limit.rise)}H${WIDTH - 10}`} />
      <text x={LEFT - 8} y={y(limit.rise)} dy="0.35em" textAnchor="end">
        {Math.round(100 * limit.rise)} %
      </text>
      <path className={styles.today} d={`M${x(now)} ${TOP}V${HEIGHT - BOTTOM}`} />
      <text className={styles.limitWords} x={LEFT + 6} y={y(limit.rise) - 8}>
        time for new ones
      </text>
      {wear.points.map(({ at, firings, rise }) => (
        <circle key={at} className={styles.point} cx={x(firings)} cy={y(rise)} r={5} />
      ))}
      <text x={x(now)} y={HEIGHT - BOTTOM + 19} textAnchor="middle">
        now
      </text>
      <text x={x(0)} y={HEIGHT - BOTTOM + 19} textAnchor="middle">
        0
      </text>
      <text x={WIDTH - 10} y={HEIGHT - BOTTOM + 19} textAnchor="end">
        {lastFiring}
      </text>
      <text x={(LEFT + WIDTH) / 2} y={HEIGHT - 4} textAnchor="middle">
        firings {wear.fromNew ? "since they were new" : "since the first firing kept here"}
      </text>
    </svg>
  );
}

/** From now to the limit, between the soonest and the latest it may be reached. */
function spreadPath(
  { least, most, expected }: NonNullable<ElementWear["remainingFirings"]>,
  now: number,
  rise: number,
  limit: number,
  x: (firings: number) => number,
  y: (rise: number) => number,
): string {
  // Where nothing bounds it from above, as far as no wear at all.
  const late = most === null ? `${x(now + expected * 10)} ${y(rise)}` : `${x(now + most)} ${y(limit)}`;
  return `M${x(now)} ${y(rise)}L${x(now + least)} ${y(limit)}L${late}Z`;
}
