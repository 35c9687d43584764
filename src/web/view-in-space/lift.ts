/** How far apart the levels are drawn at most, as a share of the chamber's depth, for each level above the lowest. */
const MOST_APART = 0.55;
const SAME_HEIGHT_MM = 1;

/**
 * How far each level is lifted off the one beneath so that one can look between them. Shelves at one height (two halves)
 * rise together. Millimetres, one a level.
 *
 * @param share 0 as they stand, 1 wide apart
 */
export function liftsOf(topsMm: readonly number[], depthMm: number, share: number): number[] {
  const heights = [...topsMm].sort((a, b) => a - b);
  const storeys = heights.filter((top, i) => i === 0 || top - (heights[i - 1] as number) > SAME_HEIGHT_MM);
  return topsMm.map((top) => {
    const beneath = storeys.filter((storey) => storey < top - SAME_HEIGHT_MM).length;
    return beneath * MOST_APART * depthMm * share;
  });
}
