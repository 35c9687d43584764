/**
 * Moves labels along a line so that none overlaps another: as little as possible in total squares, in the same order.
 * Isotonic regression by pooling neighbours (Barlow et al., Statistical Inference under Order Restrictions, 1972; from
 * memory) on places from which the labels' own sizes have been taken off.
 *
 * @param wanted where each label's middle would like to be, in rising order
 * @param sizes how much of the line each needs
 * @param from start of the line
 * @param to end of the line; where the labels need more than the whole line they run past it
 * @returns where each label's middle goes
 */
export function spread(wanted: readonly number[], sizes: readonly number[], from: number, to: number): number[] {
  const before: number[] = [];
  let total = 0;
  for (const size of sizes) {
    before.push(total);
    total += size;
  }
  const pools: { sum: number; count: number }[] = [];
  wanted.forEach((place, i) => {
    let pool = { sum: place - (sizes[i] as number) / 2 - (before[i] as number), count: 1 };
    for (let last = pools.at(-1); last && last.sum / last.count >= pool.sum / pool.count; last = pools.at(-1)) {
      pools.pop();
      pool = { sum: pool.sum + last.sum, count: pool.count + last.count };
    }
    pools.push(pool);
  });
  const starts = pools.flatMap(({ sum, count }) => Array.from({ length: count }, () => sum / count));
  return starts.map(
    (start, i) => Math.max(from, Math.min(to - total, start)) + (before[i] as number) + (sizes[i] as number) / 2,
  );
}
