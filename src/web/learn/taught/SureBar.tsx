import type { ParameterName } from "../../../firing/calibration/parameters.ts";
import type { ParameterChange } from "../../../studio/firings/calibration-change.ts";
import { away, likelySpan } from "./parameter-words.ts";
import styles from "./Taught.module.css";

interface SureBarProps {
  readonly change: ParameterChange;
  readonly beforeSigma: number;
}

const WIDTH = 240;
const HEIGHT = 26;
/** How far from what was described the bar reaches to either side: a share, or °C. What lies past it ends at its edge. */
const REACH: Readonly<Record<ParameterName, number>> = {
  wallFactor: 0.5,
  wareMassFactor: 0.4,
  powerFactor: 0.2,
  leakFactor: 0.7,
  openFactor: 0.2,
  probeOffsetC: 20,
  tilt: 0.2,
  middleShare: 0.25,
};

/** What was believed before, as a pale band, and what is believed now, as a dot with its spread; the words stand beside. */
export function SureBar({ change: { name, before, after, sigma }, beforeSigma }: SureBarProps) {
  const x = (value: number): number => {
    const share = Math.max(-1, Math.min(1, value / REACH[name]));
    return WIDTH / 2 + share * (WIDTH / 2 - 7);
  };
  const [wasLeast, wasMost] = likelySpan(name, before, beforeSigma);
  const [least, most] = likelySpan(name, after, sigma);
  const middle = HEIGHT / 2;
  return (
    <svg className={styles.bar} viewBox={`0 0 ${WIDTH} ${HEIGHT}`} aria-hidden="true">
      <rect
        className={styles.was}
        x={x(wasLeast)}
        width={Math.max(2, x(wasMost) - x(wasLeast))}
        y={4}
        height={18}
        rx={3}
      />
      <path className={styles.described} d={`M${WIDTH / 2} 1V${HEIGHT - 1}`} />
      <path
        className={styles.spread}
        d={`M${x(least)} ${middle}H${x(most)}M${x(least)} ${middle - 5}v10M${x(most)} ${middle - 5}v10`}
      />
      <circle className={styles.now} cx={x(away(name, after))} cy={middle} r={5} />
    </svg>
  );
}
