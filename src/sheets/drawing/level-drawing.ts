import { chamberRegion, edgeDistanceMm } from "../../kiln/convex-region.ts";
import { probeLine, spyholeMouth } from "../../kiln/wall-fittings.ts";
import type { PostInPlace } from "../../loading/checker/posts-in-place.ts";
import { planDistanceMm } from "../../loading/solids/plan-distance.ts";
import { farthestMm, type PlanShape } from "../../loading/solids/plan-shape.ts";
import { type Upright, widestMm } from "../../loading/solids/upright.ts";
import { formatLengthNumber, type LengthUnits } from "../../measures/length.ts";
import { COLOURS, centredText, LINES, SIZES } from "../page/sheet-style.ts";
import { wrapText } from "../page/text-measure.ts";
import { looksIn, type NumberedPiece, type SheetLevel, type SheetLoad } from "../sheet-load.ts";
import { element, group, type SvgNode } from "../svg-writer.ts";
import { chamberReach } from "./chamber-reach.ts";
import type { Drawing, LabelBox } from "./drawing.ts";
import { type LabelLine, type LabelWish, outsideWidthMm, placeLabels } from "./labels.ts";
import { discMark, regionMark, uprightMark } from "./outlines.ts";
import { type ToPaper, toPaper } from "./to-paper.ts";

/** How thick the chamber's wall is drawn: a sign, not a measure. */
const WALL_MM = 2.6;
/** From the wall to the middle of the clock's figures, and to their outside. */
const DIAL_MM = 5.6;
const DIAL_OUTSIDE_MM = 8.4;

const DASHED = { "stroke-dasharray": "0.9 0.7" };

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

const widestPart = (stack: readonly Upright[]): Upright => stack.reduce((a, b) => (widestMm(b) > widestMm(a) ? b : a));

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

function pieceWish({ piece, number }: NumberedPiece, paper: ToPaper): LabelWish {
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

function postWish(post: PostInPlace, paper: ToPaper, units: LengthUnits, alike: boolean): LabelWish {
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
function clearOfLines(box: LabelBox, load: SheetLoad, level: SheetLevel, paper: ToPaper): boolean {
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

/** A probe's sign: its length to scale, a bead at its tip; pale where it belongs to another level. */
export function probeSign(wallX: number, wallY: number, tipX: number, tipY: number, here: boolean): SvgNode {
  const length = Math.hypot(wallX - tipX, wallY - tipY) || 1;
  const outX = wallX + ((wallX - tipX) / length) * WALL_MM;
  const outY = wallY + ((wallY - tipY) / length) * WALL_MM;
  const colour = here ? COLOURS.accent : COLOURS.accentPale;
  return group([
    element("line", {
      x1: outX,
      y1: outY,
      x2: tipX,
      y2: tipY,
      stroke: colour,
      "stroke-width": 1,
      "stroke-linecap": "round",
    }),
    element("circle", { cx: tipX, cy: tipY, r: 0.9, fill: colour }),
  ]);
}

/** A spyhole's sign: a channel through the wall, white where it is open, dark where it is plugged. */
export function spyholeSign(x: number, y: number, nx: number, ny: number, half: number, open: boolean): SvgNode {
  const [ax, ay] = [-ny * half, nx * half];
  const far = WALL_MM;
  return element("path", {
    d: `M ${x + ax} ${y + ay} L ${x - ax} ${y - ay} L ${x - ax + nx * far} ${y - ay + ny * far} L ${x + ax + nx * far} ${y + ay + ny * far} Z`,
    fill: open ? COLOURS.paper : COLOURS.ink,
    stroke: COLOURS.ink,
    "stroke-width": LINES.firm,
  });
}
