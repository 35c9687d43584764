import styles from "./Against.module.css";
import { type Pair, scaleOf } from "./against-words.ts";

interface PairChartProps {
  readonly pairs: readonly Pair[];
  /** The least span of the scale. */
  readonly narrowest: number;
  readonly shown: (value: number) => string;
  readonly label: string;
}

const WIDTH = 320;
const HEIGHT = 132;
const LEFT = 58;
const TOP = 10;
const BOTTOM = 22;

/** Firings side by side, the oldest first: an open ring as foretold, a dot as measured, a line from one to the other. */
export function PairChart({ pairs, narrowest, shown, label }: PairChartProps) {
  const values = pairs.flatMap(({ foretold, actual }) => [foretold, actual].filter((each) => each !== null));
  const [from, to] = scaleOf(values, narrowest);
  const y = (value: number): number => TOP + ((to - value) / (to - from)) * (HEIGHT - TOP - BOTTOM);
  const x = (i: number): number => LEFT + ((i + 0.5) / pairs.length) * (WIDTH - LEFT - 6);
  return (
    <svg className={styles.chart} viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={label}>
      {[from, (from + to) / 2, to].map((value) => (
        <g key={value}>
          <path className={styles.grid} d={`M${LEFT} ${y(value)}H${WIDTH}`} />
          <text x={LEFT - 8} y={y(value)} dy="0.35em" textAnchor="end">
            {shown(value)}
          </text>
        </g>
      ))}
      {pairs.map(({ firingId, foretold, actual }, i) => (
        <g key={firingId}>
          {foretold !== null && actual !== null && (
            <path className={styles.apart} d={`M${x(i)} ${y(foretold)}V${y(actual)}`} />
          )}
          {foretold !== null && <circle className={styles.foretold} cx={x(i)} cy={y(foretold)} r={5.5} />}
          {actual !== null && <circle className={styles.measured} cx={x(i)} cy={y(actual)} r={4} />}
        </g>
      ))}
      <text x={x(0)} y={HEIGHT - 4} textAnchor="middle">
        {pairs.length > 1 ? "oldest" : ""}
      </text>
      <text x={x(pairs.length - 1)} y={HEIGHT - 4} textAnchor="middle">
        last
      </text>
    </svg>
  );
}
