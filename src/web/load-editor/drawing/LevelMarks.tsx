import { memo, type ReactNode } from "react";
import { regionMark, uprightMark, widestPart } from "../../../sheets/drawing/outlines.ts";
import { looksIn, type NumberedPiece, type SheetLevel, type SheetLoad } from "../../../sheets/sheet-load.ts";
import { placeKey } from "../../../studio/loads/places.ts";
import type { Frame } from "../../kilns/drawing/frame.ts";
import { FittingFromAbove, Hours, Walls } from "../../kilns/drawing/PlanDrawing.tsx";
import { levelsBeside } from "./beside.ts";
import type { KindSign } from "./kind-signs.ts";
import { signName } from "./kind-signs.ts";
import styles from "./Marks.module.css";
import { Mark, PLAN } from "./PieceFromAbove.tsx";

interface LevelGroundProps {
  readonly load: SheetLoad;
  readonly level: SheetLevel | null;
  readonly frame: Frame;
  /** Posts are drawn elsewhere: they are being moved. */
  readonly withoutPosts?: boolean;
}

/** What a level's pieces stand in: wall, shelf, posts on it and beneath it, probes and open spyholes, the hours. */
export const LevelGround = memo(function LevelGround({ load, level, frame, withoutPosts }: LevelGroundProps) {
  const { kiln } = load.request;
  const plain = { name: kiln.name, chamber: kiln.chamber };
  const isHere = (heightMm: number): boolean => level === null || looksIn(level, heightMm);
  return (
    <>
      <Walls kiln={plain} frame={frame} />
      {level && levelsBeside(load, level).map((other) => <BesideIt key={other.index} level={other} over={level} />)}
      {level && <Mark node={regionMark(level.shelf.region, PLAN, {})} name={styles.shelf} />}
      {!withoutPosts &&
        level?.postsUnder.map((post) => (
          <Mark key={post.name} node={uprightMark(widestPart(post.stack), PLAN, {})} name={styles.postUnder} />
        ))}
      {!withoutPosts &&
        level?.postsOn.map((post) => (
          <Mark key={post.name} node={uprightMark(widestPart(post.stack), PLAN, {})} name={styles.postOn} />
        ))}
      {kiln.probes.map((probe) => (
        // Every probe shows: the shelf has to pass it wherever it is.
        <g key={probe.name} className={isHere(probe.heightMm) ? undefined : styles.elsewhere}>
          <FittingFromAbove kiln={plain} thing={probe} frame={frame} />
        </g>
      ))}
      {kiln.spyholes
        .filter(({ heightMm }) => isHere(heightMm))
        .map((hole) => (
          <FittingFromAbove key={hole.name} kiln={plain} thing={hole} frame={frame} />
        ))}
      <Hours frame={frame} />
    </>
  );
});

/** A shelf beside this one, and what of it stands as high as this level does: faint, for it is seen and kept clear of. */
function BesideIt({ level, over }: { readonly level: SheetLevel; readonly over: SheetLevel }) {
  const [from, to] = [over.shelf.topMm, over.shelf.topMm + over.clearMm];
  return (
    <g className={styles.beside}>
      <Mark node={regionMark(level.shelf.region, PLAN, {})} name={styles.shelf} />
      {level.pieces
        .filter(({ piece }) => piece.solid.topMm > from && piece.solid.bottomMm < to)
        .flatMap(({ piece }) =>
          piece.solid.parts.map((part, i) => (
            <Mark
              // biome-ignore lint/suspicious/noArrayIndexKey: a solid's parts have no names and never change places
              key={`${piece.placement} ${i}`}
              node={uprightMark(part, PLAN, {})}
              name={styles.besidePiece}
            />
          )),
        )}
    </g>
  );
}

/** A piece's sign, of those given to a load's glazes. */
export const signOf = (signs: ReadonlyMap<string, KindSign>, { piece }: NumberedPiece): KindSign | undefined =>
  signs.get(signName(piece.ware));

/** Lowest rims first, so that what stands higher is drawn over them. */
export const lowestRimFirst = (pieces: readonly NumberedPiece[]): NumberedPiece[] =>
  [...pieces].sort((a, b) => a.piece.solid.topMm - b.piece.solid.topMm);

/** A group standing where its piece stands. */
export function Standing({ numbered, children }: { numbered: NumberedPiece; children: ReactNode }) {
  const { x, y } = numbered.piece;
  return (
    <g data-place={placeKey(numbered.piece)} transform={`translate(${x} ${-y})`}>
      {children}
    </g>
  );
}
