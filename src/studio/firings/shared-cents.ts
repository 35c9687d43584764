/**
 * Shares a sum of whole hundredths out by weight so that the shares sum to it exactly: each its whole part, what is left
 * to the largest remainders (Hamilton's method); of equals to the first.
 *
 * @param cents the sum, whole and 0 or more
 * @param weights 0 or more; where all are 0 everybody gets alike
 */
export function sharedCents(cents: number, weights: readonly number[]): number[] {
  const all = weights.reduce((sum, each) => sum + each, 0);
  const exact = weights.map((each) => (all > 0 ? (cents * each) / all : cents / weights.length));
  const shares = exact.map(Math.floor);
  let left = cents - shares.reduce((sum, each) => sum + each, 0);
  const byRemainder = exact
    .map((each, i) => ({ i, remainder: each - Math.floor(each) }))
    .sort((a, b) => b.remainder - a.remainder || a.i - b.i);
  for (const { i } of byRemainder) {
    if (left <= 0) break;
    shares[i] = (shares[i] as number) + 1;
    left -= 1;
  }
  return shares;
}
