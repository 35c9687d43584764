import type { Drawing } from "./drawing.ts";
import { fittingScale } from "./to-paper.ts";

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
  const suits = (drawing: Drawing): boolean => fits(drawing, shares.largest) && listFits(drawing);
  const drawing = draw(fittingScale((scale) => suits(draw(scale))));
  const tooSmall = fits(drawing, shares.least);
  return suits(drawing) && !tooSmall ? drawing : draw(fittingScale((scale) => fits(draw(scale), shares.largest)));
}
