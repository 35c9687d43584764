import { createElement, type ReactNode } from "react";
import type { PostInPlace } from "../../loading/checker/posts-in-place.ts";
import { regionMark, uprightMark } from "../../sheets/drawing/outlines.ts";
import { toPaper } from "../../sheets/drawing/to-paper.ts";
import { looksIn, type NumberedPiece, postsOnFloor, type SheetLevel, type SheetLoad } from "../../sheets/sheet-load.ts";
import type { SvgNode } from "../../sheets/svg-writer.ts";
import { placeKey } from "../../studio/loads/places.ts";
import drawing from "../kilns/drawing/Drawing.module.css";
import { frameOf, planBox } from "../kilns/drawing/frame.ts";
import { FittingFromAbove, Hours, Walls } from "../kilns/drawing/PlanDrawing.tsx";
import styles from "./LevelPicture.module.css";

interface LevelPictureProps {
  readonly load: SheetLoad;
  /** The level, or null for the floor. */
  readonly level: SheetLevel | null;
  /** What is being set down: a piece by its place, the shelf, or posts. */
  readonly marked: string | null;
  readonly done: ReadonlySet<string>;
  readonly label: string;
}

/** The chamber's own millimetres, the far side up. */
const PLAN = toPaper(1);

/** One level from above, to be read at arm's length: what is in, what comes now, what comes later. */
export function LevelPicture({ load, level, marked, done, label }: LevelPictureProps) {
  const { kiln } = load.request;
  const frame = frameOf(kiln.chamber);
  const posts = level === null ? postsOnFloor(load) : marked === "shelf" ? level.postsUnder : level.postsOn;
  const fittings = [...kiln.probes, ...kiln.spyholes].filter(
    ({ heightMm }) => level === null || looksIn(level, heightMm),
  );
  return (
    <svg className={drawing.drawing} viewBox={planBox(frame)} role="img" aria-label={label}>
      <Walls kiln={plainKiln(load)} frame={frame} />
      {level && (
        <Mark node={regionMark(level.shelf.region, PLAN, {})} name={marked === "shelf" ? styles.now : styles.shelf} />
      )}
      {posts.map((post) => (
        <PostMark key={`${post.level}.${post.post}`} post={post} name={postLook(marked)} />
      ))}
      {fittings.map((thing) => (
        <FittingFromAbove
          key={`${"reachMm" in thing}${thing.name}`}
          kiln={plainKiln(load)}
          thing={thing}
          frame={frame}
        />
      ))}
      {marked !== "shelf" &&
        marked !== "posts" &&
        level?.pieces.map((piece) => (
          <PieceMark key={piece.number} piece={piece} marked={marked} done={done} letter={frame.letter} />
        ))}
      <Hours frame={frame} />
    </svg>
  );
}

const plainKiln = ({ request: { kiln } }: SheetLoad) => ({ name: kiln.name, chamber: kiln.chamber });

const postLook = (marked: string | null): string | undefined =>
  marked === "posts" ? styles.now : marked === "shelf" ? styles.under : styles.post;

function PostMark({ post, name }: { readonly post: PostInPlace; readonly name: string | undefined }) {
  return post.stack.slice(-1).map((part) => <Mark key="top" node={uprightMark(part, PLAN, {})} name={name} />);
}

interface PieceMarkProps {
  readonly piece: NumberedPiece;
  readonly marked: string | null;
  readonly done: ReadonlySet<string>;
  readonly letter: number;
}

function PieceMark({ piece, marked, done, letter }: PieceMarkProps) {
  const { x, y, solid, ware } = piece.piece;
  const key = placeKey(piece.piece);
  const look = key === marked ? styles.now : done.has(key) ? styles.in : styles.later;
  return (
    <g>
      {[...solid.parts].reverse().map((part, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a solid's parts have no names and never change places
        <Mark key={i} node={uprightMark(part, PLAN, {})} name={look} />
      ))}
      <text
        className={key === marked ? styles.numberNow : styles.number}
        x={x}
        y={-y}
        fontSize={Math.min(letter * 1.5, ware.diameterMm * 0.5)}
        textAnchor="middle"
        dominantBaseline="central"
      >
        {piece.number}
      </text>
    </g>
  );
}

/** One outline of the sheet's drawing, in this screen's look. */
const Mark = ({ node, name }: { readonly node: SvgNode; readonly name: string | undefined }): ReactNode =>
  createElement(node.name, { ...node.attributes, className: name });
