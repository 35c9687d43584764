import styles from "./Cones.module.css";
import type { StandingCone } from "./cone-pack.ts";
import { CONE_BOX, coneShape } from "./cone-shape.ts";

const DOWN_DEG = 90;

interface ConeRowProps {
  readonly cones: readonly StandingCone[];
  readonly isSmall?: boolean;
}

/** A row of witness cones as they stand by now, bending as the heat work goes. */
export function ConeRow({ cones, isSmall = false }: ConeRowProps) {
  if (cones.length === 0) return null;
  const apart = CONE_BOX.width;
  const [width, height] = [apart * cones.length + 6, CONE_BOX.height + 20];
  return (
    <svg
      className={isSmall ? styles.small : styles.row}
      viewBox={`${CONE_BOX.left} ${CONE_BOX.top} ${width} ${height}`}
      style={{ aspectRatio: `${width} / ${height}` }}
      aria-hidden="true"
    >
      <line className={styles.plaque} x1={CONE_BOX.left} x2={CONE_BOX.left + width} y1="1" y2="1" />
      {cones.map(({ cone, bendDeg, isApart }, i) => (
        <g key={cone} transform={`translate(${i * apart} 0)`}>
          {isApart && (
            <text className={styles.between} x={-apart / 2} y="-4" textAnchor="middle">
              …
            </text>
          )}
          <path className={bendDeg >= DOWN_DEG ? styles.down : styles.standing} d={coneShape(bendDeg).outline} />
          <text className={styles.number} x="0" y="19" textAnchor="middle">
            {cone}
          </text>
        </g>
      ))}
    </svg>
  );
}
