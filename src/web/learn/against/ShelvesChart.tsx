import type { FiringAgainst } from "../../../studio/firings/predicted-against-actual.ts";
import styles from "./Against.module.css";
import { scaleOf } from "./against-words.ts";

interface ShelvesChartProps {
  /** Those whose cones tell, the oldest first. */
  readonly rows: readonly FiringAgainst[];
  readonly shown: (celsius: number) => string;
  readonly label: string;
}

const WIDTH = 320;
const HEIGHT = 150;
const LEFT = 58;
const TOP = 12;
const BOTTOM = 22;

/** How far each shelf's cones were from what was foretold: the shelf's number over the line ran hotter, under it cooler. */
export function ShelvesChart({ rows, shown, label }: ShelvesChartProps) {
  const offs = rows.flatMap(({ shelves }) => shelves.map(({ off }) => off ?? 0));
  const [from, to] = scaleOf([...offs, 0], 20);
  const y = (value: number): number => TOP + ((to - value) / (to - from)) * (HEIGHT - TOP - BOTTOM);
  const x = (i: number): number => LEFT + ((i + 0.5) / rows.length) * (WIDTH - LEFT - 6);
  return (
    <svg className={styles.chart} viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={label}>
      {[...new Set([from, 0, to])].map((value) => (
        <g key={value}>
          <path className={value === 0 ? styles.zero : styles.grid} d={`M${LEFT} ${y(value)}H${WIDTH}`} />
          <text x={LEFT - 8} y={y(value)} dy="0.35em" textAnchor="end">
            {shown(value)}
          </text>
        </g>
      ))}
      {rows.map(({ firingId, shelves }, i) =>
        shelves.map(({ level, off }, n) => (
          <g key={`${firingId} ${level}`}>
            <circle className={styles.shelf} cx={x(i) + spread(n, shelves.length)} cy={y(off ?? 0)} r={8} />
            <text
              className={styles.number}
              x={x(i) + spread(n, shelves.length)}
              y={y(off ?? 0)}
              dy="0.36em"
              textAnchor="middle"
            >
              {level + 1}
            </text>
          </g>
        )),
      )}
      <text x={x(0)} y={HEIGHT - 4} textAnchor="middle">
        {rows.length > 1 ? "oldest" : ""}
      </text>
      <text x={x(rows.length - 1)} y={HEIGHT - 4} textAnchor="middle">
        last
      </text>
    </svg>
  );
}

/** Side by side, so that one number does not lie on another. */
const spread = (n: number, of: number): number => (n - (of - 1) / 2) * 12;
