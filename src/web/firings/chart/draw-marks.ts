import type uPlot from "uplot";
import type { ChartMark } from "./chart-series.ts";

interface MarkInks {
  readonly inUnits: (celsius: number) => number;
  readonly colour: (token: string) => () => string;
  readonly font: string;
}

const TOKENS = { cone: "ink", moment: "ink-soft", now: "clay", trouble: "danger" } as const;
const LABEL_GAP_PX = 6;

/** Draws the marks over the lines: a dot on the curve or a line across, its few letters at the top where there is room. */
export function drawMarks(plot: uPlot, marks: readonly ChartMark[], { inUnits, colour, font }: MarkInks): void {
  const { ctx, bbox } = plot;
  const ratio = uPlotRatio(plot);
  const right = bbox.left + bbox.width;
  let free = Number.NEGATIVE_INFINITY;
  ctx.save();
  ctx.font = font.replace("14px", `${13 * ratio}px`);
  ctx.textBaseline = "top";
  ctx.textAlign = "left";
  for (const { atMin, tempC, short, kind = "moment" } of [...marks].sort((a, b) => a.atMin - b.atMin)) {
    const x = plot.valToPos(atMin, "x", true);
    if (x < bbox.left - 1 || x > right + 1) continue;
    const ink = colour(TOKENS[kind])();
    ctx.strokeStyle = ink;
    ctx.fillStyle = ink;
    ctx.lineWidth = (kind === "now" ? 2 : 1) * ratio;
    ctx.setLineDash(kind === "moment" ? [3 * ratio, 3 * ratio] : []);
    const width = short === undefined ? 0 : ctx.measureText(short).width;
    const at = Math.min(Math.max(x - width / 2, free, bbox.left), right - width);
    const hasRoom = short !== undefined && at >= free && Math.abs(at + width / 2 - x) < 40 * ratio;
    const top = bbox.top + (hasRoom ? 18 * ratio : 0);
    const foot = tempC === undefined ? bbox.top + bbox.height : plot.valToPos(inUnits(tempC), "y", true);
    ctx.beginPath();
    ctx.moveTo(hasRoom ? at + width / 2 : x, Math.min(top, foot));
    ctx.lineTo(x, foot);
    if (tempC === undefined || hasRoom) ctx.stroke();
    if (tempC !== undefined) {
      ctx.beginPath();
      ctx.arc(x, foot, 3.5 * ratio, 0, 2 * Math.PI);
      ctx.fill();
    }
    if (!hasRoom) continue;
    ctx.fillText(short, at, bbox.top + 1 * ratio);
    free = at + width + LABEL_GAP_PX * ratio;
  }
  ctx.restore();
}

/** Pixels of the canvas for each of the page's. */
const uPlotRatio = (plot: uPlot): number => plot.ctx.canvas.width / Math.max(1, plot.width);
