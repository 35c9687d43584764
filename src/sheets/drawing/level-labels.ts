import type { PostInPlace } from "../../loading/checker/posts-in-place.ts";
import { planDistanceMm } from "../../loading/solids/plan-distance.ts";
import { farthestMm, type PlanShape } from "../../loading/solids/plan-shape.ts";
import { type Upright, widestMm } from "../../loading/solids/upright.ts";
import { formatLengthNumber, type LengthUnits } from "../../measures/length.ts";
import { COLOURS, SIZES } from "../page/sheet-style.ts";
import { wrapText } from "../page/text-measure.ts";
import type { NumberedPiece, SheetLevel, SheetLoad } from "../sheet-load.ts";
import type { LabelBox } from "./drawing.ts";
import type { LabelLine, LabelWish } from "./labels.ts";
import { widestPart } from "./outlines.ts";
import type { ToPaper } from "./to-paper.ts";

/** What may be written on a piece: its number and name, its number alone. */
export function pieceWish({ piece, number }: NumberedPiece, paper: ToPaper): LabelWish {
  const roomMm = paper.length(piece.ware.diameterMm / 2) - 0.5;
  const line = (sizePt: number): LabelLine => ({ text: String(number), sizePt, weight: "bold" });
  const named = (width: number): LabelLine[] => [
    line(14),
    ...wrapText(piece.ware.name, width, SIZES.small).map(
      (text): LabelLine => ({ text, sizePt: SIZES.small, weight: "regular" }),
    ),
  ];
  const widths = [roomMm * 1.9, roomMm * 1.6, roomMm * 1.25];
  return {
    x: paper.x(piece.x),
    y: paper.y(piece.y),
    roomMm,
    reachMm: paper.length(farthestOfPiece(piece)),
    fill: COLOURS.ink,
    choices: [...widths.map(named).filter((lines) => lines.length <= 3), [line(14)], [line(11)], [line(SIZES.small)]],
    outside: { text: String(number), sizePt: SIZES.small, weight: "bold" },
  };
}

/** The radius of the circle about a piece's axis that holds its body and its cookie; handles may be written beside. */
const farthestOfPiece = ({ ware }: NumberedPiece["piece"]): number =>
  Math.max(ware.diameterMm, ware.cookie?.diameterMm ?? 0) / 2;

/** What may be written on a post: its height; nothing where there is no room and it is told elsewhere. */
export function postWish(post: PostInPlace, paper: ToPaper, units: LengthUnits, alike: boolean): LabelWish {
  const text = post.heightsMm.map((height) => formatLengthNumber(height, units)).join("+");
  const part = widestPart(post.stack);
  const reach = farthestMm(part.core, post.x, post.y) + widestMm(part);
  // Half the side of a square post, however it is turned; the radius of a round one.
  const half = part.core.corners.length > 1 ? reach / Math.SQRT2 : reach;
  const words: LabelLine = { text, sizePt: SIZES.small, weight: "bold" };
  return {
    x: paper.x(post.x),
    y: paper.y(post.y),
    roomMm: paper.length(half),
    reachMm: paper.length(reach),
    fill: COLOURS.paper,
    choices: [[words]],
    outside: alike ? null : words,
  };
}

/** Whether words stand inside the chamber, off the dashes of posts beneath and off the probes. */
export function clearOfLines(box: LabelBox, load: SheetLoad, level: SheetLevel, paper: ToPaper): boolean {
  const corners = [box.x, box.x + box.width].flatMap((x) =>
    [box.y, box.y + box.height].map((y) => [x * paper.scale, -y * paper.scale] as const),
  );
  const { circle, sides } = load.scene.chamber;
  const words = hullShape(corners);
  const lines = [
    ...level.postsUnder.map((post) => post.stack[0] as Upright),
    ...load.scene.probes.flatMap((probe) => probe.solid.parts),
  ];
  return (
    corners.every(
      ([x, y]) =>
        sides.every((side) => side.nx * x + side.ny * y <= side.offset) &&
        (!circle || Math.hypot(x - circle.x, y - circle.y) <= circle.radius),
    ) && lines.every((part) => planDistanceMm(part.core, words) - widestMm(part) > paper.scale * 0.6)
  );
}

/** A box of words as a plan shape. */
const hullShape = (corners: readonly (readonly [number, number])[]): PlanShape => ({
  corners,
  normals: [
    [1, 0],
    [-1, 0],
    [0, 1],
    [0, -1],
  ],
  arc: null,
});
