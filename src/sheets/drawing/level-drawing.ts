import { chamberRegion, edgeDistanceMm } from "../../kiln/convex-region.ts";
import { probeLine, spyholeMouth } from "../../kiln/wall-fittings.ts";
import { type Upright, widestMm } from "../../loading/solids/upright.ts";
import type { LengthUnits } from "../../measures/length.ts";
import { COLOURS, centredText, LINES, SIZES } from "../page/sheet-style.ts";
import { looksIn, type NumberedPiece, type SheetLevel, type SheetLoad } from "../sheet-load.ts";
import { group, type SvgNode } from "../svg-writer.ts";
import { chamberReach } from "./chamber-reach.ts";
import type { Drawing } from "./drawing.ts";
import { outsideWidthMm, placeLabels } from "./labels.ts";
import { clearOfLines, pieceWish, postWish } from "./level-labels.ts";
import { discMark, regionMark, uprightMark, widestPart } from "./outlines.ts";
import { DASHED, probeSign, spyholeSign, WALL_MM } from "./signs.ts";
import { type ToPaper, toPaper } from "./to-paper.ts";

/** From the wall to the middle of the clock's figures, and to their outside. */
const DIAL_MM = 5.6;
const DIAL_OUTSIDE_MM = 8.4;

/**
 * One level seen from above, to scale: chamber, shelf, every piece in its own outline with its number, posts, probes and
 * spyholes, the hours of a clock about the wall. 12 o'clock is +y, at the top.
 *
 * @param scale millimetres of kiln to one of paper
 */
export function levelDrawing(load: SheetLoad, level: SheetLevel, scale: number, units: LengthUnits): Drawing {
  const paper = toPaper(scale);
  const chamber = chamberRegion(load.request.kiln.chamber);
  const reach = (angleDeg: number): number => paper.length(edgeDistanceMm(chamber, angleDeg));
  const most = chamberReach(load.request.kiln.chamber);
  const halfWidth = paper.length(most.x) + DIAL_OUTSIDE_MM;
  const halfHeight = paper.length(most.y) + DIAL_OUTSIDE_MM;

  // Where all posts on the shelf are alike their height stands over the drawing and need not be told at each.
  const alike = new Set(level.postsOn.map((post) => post.heightsMm.join())).size === 1;
  const wishes = [
    ...level.postsOn.map((post) => postWish(post, paper, units, alike)),
    ...level.pieces.map((piece) => pieceWish(piece, paper)),
  ];
  const sides = { left: -halfWidth - 1, right: halfWidth + 1, top: -halfHeight, bottom: halfHeight };
  const placed = placeLabels(wishes, sides, (box) => clearOfLines(box, load, level, paper));
  const columns = placed.outside > 0 ? outsideWidthMm(wishes) + 2 : 0;
  const marks = [
    ...wall(load, paper),
    ...dial(reach),
    regionMark(level.shelf.region, paper, { fill: COLOURS.clay, stroke: COLOURS.ink, "stroke-width": LINES.fine }),
    ...placed.leaders,
    ...level.postsOn.map((post) =>
      uprightMark(widestPart(post.stack), paper, {
        fill: COLOURS.accent,
        stroke: COLOURS.accent,
        "stroke-width": LINES.fine,
      }),
    ),
    ...lowestRimFirst(level.pieces).map((piece) => pieceMark(piece, paper)),
    ...level.postsUnder.flatMap((post) => postBeneath(widestPart(post.stack), paper)),
    ...fittings(load, level, paper),
    ...placed.words,
  ];
  return {
    scale,
    left: -halfWidth - columns,
    top: -halfHeight,
    width: 2 * (halfWidth + columns),
    height: 2 * halfHeight,
    marks,
    labels: placed.labels,
  };
}

function wall(load: SheetLoad, paper: ToPaper): SvgNode[] {
  const chamber = chamberRegion(load.request.kiln.chamber);
  return [
    regionMark(chamber, paper, {
      fill: COLOURS.wall,
      stroke: COLOURS.wall,
      "stroke-width": WALL_MM * 2,
      "stroke-linejoin": "round",
    }),
    regionMark(chamber, paper, { fill: COLOURS.paper, stroke: COLOURS.ink, "stroke-width": LINES.firm }),
  ];
}

function dial(reach: (angleDeg: number) => number): SvgNode[] {
  return Array.from({ length: 12 }, (_, i) => {
    const hour = i === 0 ? 12 : i;
    const angle = 90 - 30 * i;
    const x = Math.cos((angle * Math.PI) / 180);
    const y = -Math.sin((angle * Math.PI) / 180);
    const at = reach(angle) + DIAL_MM;
    const main = hour % 3 === 0;
    return centredText(x * at, y * at, String(hour), {
      sizePt: SIZES.small,
      weight: main ? "bold" : "regular",
      fill: main ? COLOURS.ink : COLOURS.quiet,
    });
  });
}

const lowestRimFirst = (pieces: readonly NumberedPiece[]): NumberedPiece[] =>
  [...pieces].sort((a, b) => a.piece.solid.topMm - b.piece.solid.topMm);

function pieceMark({ piece, number }: NumberedPiece, paper: ToPaper): SvgNode {
  const outline = { fill: COLOURS.paper, stroke: COLOURS.ink, "stroke-width": LINES.firm };
  const [body, ...others] = piece.solid.parts as [(typeof piece.solid.parts)[0], ...typeof piece.solid.parts];
  const cookie = piece.ware.cookie ? others.shift() : undefined;
  const marks = others.map((part) => uprightMark(part, paper, outline));
  const bodyMark = uprightMark(body, paper, outline);
  if (cookie) {
    const wider = widestMm(cookie) > widestMm(body);
    const ring = uprightMark(cookie, paper, {
      fill: wider ? COLOURS.clay : "none",
      stroke: COLOURS.accent,
      "stroke-width": LINES.fine,
    });
    marks.push(...(wider ? [ring, bodyMark] : [bodyMark, ring]));
  } else marks.push(bodyMark);
  const foot = piece.ware.profile?.[0]?.[1];
  if (foot !== undefined && foot > 0) {
    marks.push(
      discMark(piece.x, piece.y, foot, paper, {
        fill: "none",
        stroke: COLOURS.line,
        "stroke-width": LINES.fine,
        ...DASHED,
      }),
    );
  }
  return group(marks, { "data-piece": number });
}

/** A post hidden by the shelf: dashes, on a pale line so that they show on the post above it too. */
const postBeneath = (part: Upright, paper: ToPaper): SvgNode[] => [
  uprightMark(part, paper, { fill: "none", stroke: COLOURS.clay, "stroke-width": LINES.firm }),
  uprightMark(part, paper, { fill: "none", stroke: COLOURS.ink, "stroke-width": LINES.firm, ...DASHED }),
];

/** Every probe, for the shelf has to pass it; the spyholes that open into this level. */
function fittings(load: SheetLoad, level: SheetLevel, paper: ToPaper): SvgNode[] {
  const { chamber, probes, spyholes } = load.request.kiln;
  return [
    ...probes.map((probe) => {
      const { wallX, wallY, tipX, tipY, heightMm } = probeLine(chamber, probe);
      return probeSign(paper.x(wallX), paper.y(wallY), paper.x(tipX), paper.y(tipY), looksIn(level, heightMm));
    }),
    ...spyholes
      .filter((hole) => looksIn(level, hole.heightMm))
      .map((hole) => {
        const mouth = spyholeMouth(chamber, hole);
        const half = Math.max(paper.length(mouth.radiusMm), 0.8);
        return spyholeSign(paper.x(mouth.x), paper.y(mouth.y), mouth.nx, -mouth.ny, half, hole.open);
      }),
  ];
}
