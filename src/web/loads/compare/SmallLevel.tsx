import { memo } from "react";
import type { Scene } from "../../../loading/checker/scene.ts";
import { type Upright, widestMm } from "../../../loading/solids/upright.ts";
import { outlineOf } from "../../view-in-space/solids/outline.ts";
import styles from "./SmallLevel.module.css";

interface SmallLevelProps {
  readonly scene: Scene;
  readonly level: number;
  /** What it shows, for who cannot see it. */
  readonly label: string;
}

const AROUND_MM = 10;
const LINE_MM = 3;

/** A level seen from above, all ways at one scale: the wall, the shelf, the posts, each piece with its name to be pressed for. */
export const SmallLevel = memo(function SmallLevel({ scene, level, label }: SmallLevelProps) {
  const wall = outlineOf(scene.chamber);
  const [halfX, halfY] = [0, 1].map(
    (axis) => Math.max(...wall.map((at) => Math.abs(at[axis as 0 | 1]))) + AROUND_MM,
  ) as [number, number];
  const shelf = scene.shelves[level];
  return (
    <svg
      className={styles.drawing}
      viewBox={`${-halfX} ${-halfY} ${2 * halfX} ${2 * halfY}`}
      role="img"
      aria-label={label}
    >
      <path className={styles.wall} d={pathThrough(wall)} />
      {shelf && <path className={styles.shelf} d={pathThrough(outlineOf(shelf.region))} />}
      {scene.posts
        .filter(({ standsOn }) => standsOn === level)
        .map((post) => (
          <circle key={post.name} className={styles.post} cx={post.x} cy={-post.y} r={post.solid.reachMm * 0.75} />
        ))}
      {scene.pieces
        .filter((piece) => piece.level === level)
        .map((piece) => (
          <g key={piece.thing}>
            <title>{piece.ware.name}</title>
            {[...piece.solid.parts].reverse().map((part, i) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: a piece's parts are what they are, in their own order.
              <PartMark key={i} part={part} />
            ))}
          </g>
        ))}
    </svg>
  );
});

/** A body as a disc; a handle or spout as a rounded bar. */
function PartMark({ part }: { part: Upright }) {
  const radius = widestMm(part);
  const [from, to] = part.core.corners as [readonly [number, number], (readonly [number, number])?];
  if (!to) return <circle className={styles.piece} cx={from[0]} cy={-from[1]} r={radius} />;
  const bar = { x1: from[0], y1: -from[1], x2: to[0], y2: -to[1] };
  return (
    <>
      <line className={styles.edge} {...bar} strokeWidth={2 * radius} />
      <line className={styles.inside} {...bar} strokeWidth={Math.max(1, 2 * radius - 2 * LINE_MM)} />
    </>
  );
}

const pathThrough = (outline: readonly (readonly [number, number])[]): string =>
  `M${outline.map(([x, y]) => `${Math.round(x * 10) / 10} ${Math.round(-y * 10) / 10}`).join("L")}Z`;
