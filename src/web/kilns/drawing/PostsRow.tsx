import type { Post } from "../../../kiln/furniture.ts";
import { formatLengthNumber, type LengthUnits } from "../../../measures/length.ts";
import styles from "./PostsRow.module.css";

const GAP_MM = 22;
const LETTER_MM = 15;

/** Her posts side by side to one scale, the shortest first, each with its height and how many there are. */
export function PostsRow({ posts, units }: { posts: readonly Post[]; units: LengthUnits }) {
  const sorted = [...posts].filter(({ count }) => count > 0).sort((a, b) => a.heightMm - b.heightMm);
  const tallest = Math.max(0, ...sorted.map(({ heightMm }) => heightMm));
  const widths = sorted.map(({ widthMm }) => Math.max(widthMm, LETTER_MM * 2));
  const width = widths.reduce((sum, each) => sum + each + GAP_MM, -GAP_MM);
  if (sorted.length === 0) return null;
  const middleOf = (i: number): number =>
    widths.slice(0, i).reduce((sum, each) => sum + each + GAP_MM, 0) + (widths[i] as number) / 2;
  const words = sorted.map(({ heightMm, count }) => `${count} of ${formatLengthNumber(heightMm, units)}`).join(", ");
  return (
    <svg
      className={styles.row}
      viewBox={`-4 ${-tallest - LETTER_MM * 1.6} ${width + 8} ${tallest + LETTER_MM * 3.4}`}
      style={{ maxWidth: `${(width + 8) * 0.95}px` }}
      role="img"
      aria-label={`Posts to scale: ${words}`}
    >
      <line className={styles.floor} x1={-4} x2={width + 4} y1={0} y2={0} />
      {sorted.map((post, i) => {
        const x = middleOf(i);
        return (
          // biome-ignore lint/suspicious/noArrayIndexKey: two kinds of post may be alike in every measure
          <g key={i}>
            <rect
              className={styles.post}
              x={x - post.widthMm / 2}
              y={-post.heightMm}
              width={post.widthMm}
              height={post.heightMm}
              rx={post.shape === "round" ? Math.min(post.widthMm, post.heightMm) * 0.28 : 1.5}
            />
            <text x={x} y={-post.heightMm - LETTER_MM * 0.45} textAnchor="middle" fontSize={LETTER_MM}>
              {formatLengthNumber(post.heightMm, units)}
            </text>
            <text className={styles.count} x={x} y={LETTER_MM * 1.3} textAnchor="middle" fontSize={LETTER_MM}>
              {post.count} ×
            </text>
          </g>
        );
      })}
    </svg>
  );
}
