import { COLOURS, LINES, SIZES, textLine } from "../page/sheet-style.ts";
import { textWidthMm } from "../page/text-measure.ts";
import { element, group, moved, type SvgNode } from "../svg-writer.ts";
import { probeSign, spyholeSign } from "./signs.ts";

const ROW_MM = 5.4;
const SIGN_MM = 7;
const GAP_MM = 5;

/** What the signs of a level's drawing mean, in rows no wider than `widthMm`, only those that occur. */
export function levelLegend(
  occurs: {
    postsOn: boolean;
    postsUnder: boolean;
    cookies: boolean;
    feet: boolean;
    probeHere: boolean;
    probeElsewhere: boolean;
    open: boolean;
    plugged: boolean;
  },
  widthMm: number,
): { marks: SvgNode[]; heightMm: number } {
  const square = (look: Record<string, string | number>): SvgNode =>
    element("rect", { x: 0.6, y: -1.7, width: 3.4, height: 3.4, ...look });
  const ring = (look: Record<string, string | number>): SvgNode =>
    element("circle", { cx: 2.3, cy: 0, r: 1.8, fill: "none", ...look });
  const inWall = (open: boolean): SvgNode =>
    group([
      element("rect", { x: 0, y: -1.3, width: 5, height: 2.6, fill: COLOURS.wall }),
      spyholeSign(2.5, 1.3, 0, -1, 0.9, open),
    ]);
  const entries: [boolean, string, SvgNode][] = [
    [occurs.postsOn, "post to stand on this shelf", square({ fill: COLOURS.accent })],
    [
      occurs.postsUnder,
      "post beneath this shelf",
      square({ fill: "none", stroke: COLOURS.ink, "stroke-width": LINES.firm, "stroke-dasharray": "0.9 0.7" }),
    ],
    [occurs.cookies, "cookie", ring({ stroke: COLOURS.accent, "stroke-width": LINES.fine })],
    [occurs.feet, "foot", ring({ stroke: COLOURS.quiet, "stroke-width": LINES.fine, "stroke-dasharray": "0.9 0.7" })],
    [occurs.probeHere, "probe", probeSign(2.8, 0, 4.8, 0, true)],
    [occurs.probeElsewhere, "probe, on another level", probeSign(2.8, 0, 4.8, 0, false)],
    [occurs.open, "open spyhole", inWall(true)],
    [occurs.plugged, "plugged spyhole", inWall(false)],
  ];
  const marks: SvgNode[] = [];
  let x = 0;
  let row = 0;
  for (const [, words, sign] of entries.filter(([present]) => present)) {
    const width = SIGN_MM + textWidthMm(words, SIZES.small, "regular");
    if (x > 0 && x + width > widthMm) {
      x = 0;
      row += 1;
    }
    marks.push(
      moved(x, row * ROW_MM + 2.4, [sign]),
      textLine(x + SIGN_MM, row * ROW_MM + 3.5, words, { sizePt: SIZES.small, fill: COLOURS.quiet }),
    );
    x += width + GAP_MM;
  }
  return { marks, heightMm: (row + 1) * ROW_MM };
}
