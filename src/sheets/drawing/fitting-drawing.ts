import type { Drawing } from "./drawing.ts";
import { SCALES } from "./to-paper.ts";

/**
 * A drawing at the scale that suits its page: the largest at which the list below it fits the same page, so long as the
 * drawing keeps its least share; else the largest the page gives a drawing, the list running on.
 *
 * @param draw the drawing at a scale
 * @param fits whether it keeps within a share of the page
 * @param listFits whether the list then ends on the same page
 */
export function fittingDrawing(
  draw: (scale: number) => Drawing,
  fits: (drawing: Drawing, share: number) => boolean,
  listFits: (drawing: Drawing) => boolean,
  shares: { readonly largest: number; readonly least: number },
): Drawing {
  let largest: Drawing | null = null;
  for (const scale of SCALES) {
    const drawing = draw(scale);
    if (!fits(drawing, shares.largest)) continue;
    largest ??= drawing;
    if (fits(drawing, shares.least)) break;
    if (listFits(drawing)) return drawing;
  }
  return largest ?? draw(SCALES.at(-1) as number);
}
