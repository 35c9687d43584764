import { COLOURS, LINES } from "../page/sheet-style.ts";
import { element, group, type SvgNode } from "../svg-writer.ts";

/** How thick a chamber's wall is drawn: a sign, not a measure. */
export const WALL_MM = 2.6;
/** The stroke of what is hidden or only meant: posts beneath a shelf, a foot. */
export const DASHED = { "stroke-dasharray": "0.9 0.7" };

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
