import { memo } from "react";
import type { PostInPlace } from "../../../loading/checker/posts-in-place.ts";
import type { ShelfInPlace } from "../../../loading/checker/scene.ts";
import { reachAlong } from "../../../loading/solids/plan-shape.ts";
import { type Upright, widestMm } from "../../../loading/solids/upright.ts";
import { silhouette } from "../../../sheets/drawing/silhouette.ts";
import type { NumberedPiece, SheetLevel } from "../../../sheets/sheet-load.ts";
import type { SvgNode } from "../../../sheets/svg-writer.ts";
import { placeKey } from "../../../studio/loads/places.ts";
import { type KindSign, signName } from "./kind-signs.ts";
import styles from "./Marks.module.css";
import { Mark, PLAN } from "./PieceFromAbove.tsx";

/** How far a block reaches to the left and to the right, seen from the front. */
export const acrossOf = (part: Upright): [number, number] => [
  -reachAlong(part.core, -1, 0) - widestMm(part),
  reachAlong(part.core, 1, 0) + widestMm(part),
];

/** A shelf cut through. */
export function ShelfFromSide({ shelf, isChosen }: { readonly shelf: ShelfInPlace; readonly isChosen: boolean }) {
  const [from, to] = acrossOf(shelf.solid.parts[0] as Upright);
  const height = shelf.topMm - shelf.undersideMm;
  const look = isChosen ? styles.shelfChosen : styles.shelfSide;
  return <rect className={look} x={from} y={-shelf.topMm} width={to - from} height={height} />;
}

/** A post, or two stacked. */
export const PostFromSide = ({ post }: { readonly post: PostInPlace }) =>
  post.stack.map((part) => {
    const [from, to] = acrossOf(part);
    const [bottom, top] = [part.rings[0]?.[0] ?? 0, part.rings.at(-1)?.[0] ?? 0];
    return (
      <rect key={bottom} className={styles.postSide} x={from} y={-top} width={to - from} height={top - bottom} rx={2} />
    );
  });

interface PiecesProps {
  readonly level: SheetLevel;
  readonly signs: ReadonlyMap<string, KindSign>;
  readonly chosen: ReadonlySet<string>;
}

/** A level's pieces in silhouette, the farthest first. */
export const PiecesFromSide = memo(function PiecesFromSide({ level, signs, chosen }: PiecesProps) {
  return [...level.pieces]
    .sort((a, b) => b.piece.y - a.piece.y)
    .map((numbered) => {
      const key = placeKey(numbered.piece);
      const colour = styles[`colour${signs.get(signName(numbered.piece.ware))?.colour ?? 0}`];
      return (
        <g key={key} className={`${colour} ${chosen.has(key) ? styles.chosenSide : ""}`}>
          <Silhouette numbered={numbered} standsAtMm={level.shelf.topMm} />
        </g>
      );
    });
});

function Silhouette({ numbered, standsAtMm }: { readonly numbered: NumberedPiece; readonly standsAtMm: number }) {
  return silhouette(numbered.piece, numbered.turnDeg, standsAtMm, INSIDE, PLAN).map((node, i) => (
    // biome-ignore lint/suspicious/noArrayIndexKey: a silhouette's marks have no names and never change places
    <Mark key={i} node={node} name={lookOf(node.attributes)} />
  ));
}

const INSIDE = "inside";

/** A handle is drawn twice: a dark line, and within it one in the piece's own colour. */
function lookOf({ fill, stroke }: SvgNode["attributes"]): string | undefined {
  if (fill !== "none") return styles.silhouette;
  return stroke === INSIDE ? styles.earInside : styles.ear;
}
