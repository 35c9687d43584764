/** The longest side a photo is sent with: enough to see a glaze's surface, small enough for a phone's line. */
export const LONGEST_SIDE_PX = 2000;

/** The size a picture is scaled down to so that neither side is longer than it may be. Never scaled up. */
export function fittingSize(
  width: number,
  height: number,
  longest = LONGEST_SIDE_PX,
): { width: number; height: number } {
  const share = Math.min(1, longest / Math.max(width, height));
  return { width: Math.max(1, Math.round(width * share)), height: Math.max(1, Math.round(height * share)) };
}
