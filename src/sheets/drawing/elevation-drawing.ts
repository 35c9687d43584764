import { probeLine, spyholeMouth } from "../../kiln/wall-fittings.ts";
import { reachAlong } from "../../loading/solids/plan-shape.ts";
import { type Upright, widestMm } from "../../loading/solids/upright.ts";
import type { LengthUnits } from "../../measures/length.ts";
import { COLOURS, LINES } from "../page/sheet-style.ts";
import type { SheetLoad } from "../sheet-load.ts";
import { element, group, type SvgNode } from "../svg-writer.ts";
import { chamberReach } from "./chamber-reach.ts";
import type { Drawing } from "./drawing.ts";
import { clearLabels, heightLabels } from "./elevation-labels.ts";
import { silhouette } from "./silhouette.ts";
import { type ToPaper, toPaper } from "./to-paper.ts";

/** How thick wall, floor and lid are drawn: a sign, not a measure. */
const WALL_MM = 3;
const LID_GAP_MM = 0.6;

/**
 * The whole kiln seen from the front, cut open, to scale: floor and lid, shelves and posts, every piece in silhouette,
 * probes and spyholes; on the left heights above the floor, on the right the clear height over each shelf.
 *
 * @param scale millimetres of kiln to one of paper
 */
export function elevationDrawing(load: SheetLoad, scale: number, units: LengthUnits): Drawing {
  const paper = toPaper(scale);
  const { chamber } = load.request.kiln;
  const half = paper.length(chamberReach(chamber).x);
  const top = paper.y(chamber.depthMm) - LID_GAP_MM - WALL_MM;
  const outer = half + WALL_MM;
  const heights = heightLabels(load, paper, -outer, units);
  const clear = clearLabels(load, paper, outer, units);
  const words = [...heights.labels, ...clear.labels];
  const highest = Math.min(top, ...words.map((label) => label.y));
  const lowest = Math.max(WALL_MM, ...words.map((label) => label.y + label.height));
  const left = Math.min(-outer, ...words.map((label) => label.x));
  const right = Math.max(outer, ...words.map((label) => label.x + label.width));
  return {
    scale,
    left,
    top: highest,
    width: right - left,
    height: lowest - highest,
    marks: [
      ...walls(half, paper.y(chamber.depthMm)),
      ...furniture(load, paper),
      ...pieces(load, paper),
      ...fittings(load, paper),
      ...heights.marks,
      ...clear.marks,
    ],
    labels: words,
  };
}

function walls(half: number, lidY: number): SvgNode[] {
  const brick = { fill: COLOURS.wall, stroke: "none" };
  const outer = half + WALL_MM;
  return [
    element("rect", { x: -outer, y: lidY, width: 2 * outer, height: -lidY + WALL_MM, ...brick }),
    element("rect", { x: -outer, y: lidY - LID_GAP_MM - WALL_MM, width: 2 * outer, height: WALL_MM, ...brick }),
    element("rect", { x: -half, y: lidY, width: 2 * half, height: -lidY, fill: COLOURS.paper }),
    element("path", {
      d: `M ${-half} ${lidY} L ${-half} 0 L ${half} 0 L ${half} ${lidY}`,
      fill: "none",
      stroke: COLOURS.ink,
      "stroke-width": LINES.firm,
    }),
    element("line", {
      x1: -outer,
      y1: lidY - LID_GAP_MM,
      x2: outer,
      y2: lidY - LID_GAP_MM,
      stroke: COLOURS.ink,
      "stroke-width": LINES.firm,
    }),
  ];
}

/** Probes and spyholes, over everything: their places matter more than what stands before them. */
function fittings(load: SheetLoad, paper: ToPaper): SvgNode[] {
  const { chamber, probes, spyholes } = load.request.kiln;
  return [
    ...spyholes.map((hole) => {
      const mouth = spyholeMouth(chamber, hole);
      // A round mouth seen askew is an ellipse.
      const rx = Math.max(0.5, paper.length(mouth.radiusMm) * Math.abs(mouth.ny));
      return element("ellipse", {
        cx: paper.x(mouth.x),
        cy: paper.y(mouth.heightMm),
        rx,
        ry: Math.max(0.8, paper.length(mouth.radiusMm)),
        fill: hole.open ? COLOURS.paper : COLOURS.ink,
        stroke: COLOURS.ink,
        "stroke-width": LINES.fine,
      });
    }),
    ...probes.map((probe) => {
      const line = probeLine(chamber, probe);
      const y = paper.y(line.heightMm);
      return group([
        element("line", {
          x1: paper.x(line.wallX),
          y1: y,
          x2: paper.x(line.tipX),
          y2: y,
          stroke: COLOURS.accent,
          "stroke-width": 1.2,
          "stroke-linecap": "round",
        }),
        element("circle", { cx: paper.x(line.tipX), cy: y, r: 0.9, fill: COLOURS.accent }),
      ]);
    }),
  ];
}

function furniture(load: SheetLoad, paper: ToPaper): SvgNode[] {
  const shelves = load.scene.shelves.map(({ solid, undersideMm, topMm }, i) => {
    const [from, to] = acrossOf(solid.parts[0] as Upright);
    return element("rect", {
      x: paper.x(from),
      y: paper.y(topMm),
      width: paper.length(to - from),
      height: paper.length(topMm - undersideMm),
      fill: COLOURS.clay,
      stroke: COLOURS.ink,
      "stroke-width": LINES.fine,
      "data-shelf": i + 1,
    });
  });
  const posts = load.scene.posts.flatMap((post) => post.stack.map((part) => postMark(part, paper)));
  return [...posts, ...shelves];
}

/** How far a block reaches to the left and to the right, seen from the front. */
const acrossOf = (part: Upright): [number, number] => [
  -reachAlong(part.core, -1, 0) - widestMm(part),
  reachAlong(part.core, 1, 0) + widestMm(part),
];

function postMark(part: Upright, paper: ToPaper): SvgNode {
  const [left, right] = acrossOf(part);
  const bottom = part.rings[0]?.[0] ?? 0;
  const top = part.rings.at(-1)?.[0] ?? 0;
  return element("rect", {
    x: paper.x(left),
    y: paper.y(top),
    width: paper.length(right - left),
    height: paper.length(top - bottom),
    fill: COLOURS.accentPale,
    stroke: COLOURS.accent,
    "stroke-width": LINES.fine,
  });
}

function pieces(load: SheetLoad, paper: ToPaper): SvgNode[] {
  return load.levels.flatMap((level) => {
    const farFirst = [...level.pieces].sort((a, b) => b.piece.y - a.piece.y);
    return farFirst.map(({ piece, turnDeg, number }, i) => {
      const near = farFirst.length < 2 ? 1 : i / (farFirst.length - 1);
      const marks = silhouette(piece, turnDeg, level.shelf.topMm, shade(near), paper);
      return group(marks, { "data-piece": `${level.number}.${number}` });
    });
  });
}

/** From a pale clay at the back to white in front. */
function shade(near: number): string {
  const back = [0xe9, 0xda, 0xcc];
  const channel = (from: number): string =>
    Math.round(from + (0xff - from) * near)
      .toString(16)
      .padStart(2, "0");
  return `#${back.map(channel).join("")}`;
}
