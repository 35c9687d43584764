import { formatLength, formatLengthNumber, type LengthUnits } from "../../measures/length.ts";
import { COLOURS, LINES, SIZES, textLine } from "../page/sheet-style.ts";
import { element, group, type SvgNode } from "../svg-writer.ts";
import { scaleText } from "./to-paper.ts";

/** How long the bar is on paper, so that a ruler laid on the page tells whether it was printed at its own size. */
export const barLengthMm = (units: LengthUnits): number => (units === "inches" ? 2 * 25.4 : 50);
export const SCALE_BAR_HEIGHT_MM = 12;

/**
 * A scale bar from its left end, 12 mm tall: kiln lengths along it, and how long it must be on paper.
 */
export function scaleBar(scale: number, units: LengthUnits): SvgNode {
  const length = barLengthMm(units);
  const parts = units === "inches" ? 4 : 5;
  const step = length / parts;
  const small = { sizePt: SIZES.small, fill: COLOURS.quiet } as const;
  const number = (part: number): string => formatLengthNumber(step * part * scale, units);
  const unit = units === "inches" ? "in" : "mm";
  return group([
    ...Array.from({ length: parts }, (_, i) =>
      element("rect", {
        x: i * step,
        y: 4.2,
        width: step,
        height: 1.4,
        fill: i % 2 === 0 ? COLOURS.ink : COLOURS.paper,
        stroke: COLOURS.ink,
        "stroke-width": LINES.fine,
      }),
    ),
    textLine(0, 3, "0", small),
    textLine(length, 3, `${number(parts)} ${unit}`, { ...small, anchor: "end" }),
    textLine(length / 2, 3, scaleText(scale), { ...small, weight: "bold", anchor: "middle", fill: COLOURS.ink }),
    textLine(0, 10, `on paper: ${formatLength(length, units)}; check with a ruler`, small),
  ]);
}
