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
            <NameMark name={piece.ware.name} x={piece.x} y={-piece.y} acrossMm={piece.ware.diameterMm} />
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

const LETTER = { largestMm: 17, smallestMm: 11, widthShare: 0.56, heightShare: 1.1 } as const;

/** The piece's name, a word a line, where it can be read inside it. */
function NameMark({ name, x, y, acrossMm }: { name: string; x: number; y: number; acrossMm: number }) {
  const words = name.split(/\s+/);
  const longest = Math.max(...words.map(({ length }) => length));
  // Inside a disc the corners of the words' block must not stick out.
  const block = Math.hypot(longest * LETTER.widthShare, words.length * LETTER.heightShare);
  const size = Math.min(LETTER.largestMm, (acrossMm - 2 * LINE_MM) / block);
  if (size < LETTER.smallestMm) return null;
  const first = y - ((words.length - 1) / 2) * LETTER.heightShare * size;
  return (
    <text className={styles.name} fontSize={size}>
      {words.map((word, line) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the words of a name stand in their own order.
        <tspan key={line} x={x} y={first + line * LETTER.heightShare * size}>
          {word}
        </tspan>
      ))}
    </text>
  );
}

const pathThrough = (outline: readonly (readonly [number, number])[]): string =>
  `M${outline.map(([x, y]) => `${Math.round(x * 10) / 10} ${Math.round(-y * 10) / 10}`).join("L")}Z`;
