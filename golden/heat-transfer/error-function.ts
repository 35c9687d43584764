/**
 * erf(x), to about 1e-15.
 *
 * Below 2 the series Σ 2/√π · e^(−x²) · 2ⁿ x^(2n+1) / (1·3·5…(2n+1)), all terms of one sign: Abramowitz and Stegun 7.1.6.
 */
export function erf(x: number): number {
  if (x < 0) return -erf(-x);
  if (x >= 2) return 1 - erfc(x);
  let term = x;
  let sum = x;
  for (let n = 1; n < 200 && term > sum * 1e-17; n++) {
    term *= (2 * x * x) / (2 * n + 1);
    sum += term;
  }
  return (2 / Math.sqrt(Math.PI)) * Math.exp(-x * x) * sum;
}

/** erfc(x) = 1 − erf(x), to about 1e-14 of itself above 2. */
export function erfc(x: number): number {
  return x < 2 ? 1 - erf(x) : Math.exp(-x * x) * scaledErfc(x);
}

/** e^(x²)·erfc(x) for x ≥ 2 by its continued fraction, Abramowitz and Stegun 7.1.14, from the far end. */
export function scaledErfc(x: number): number {
  if (x < 2) return Math.exp(x * x) * (1 - erf(x));
  let tail = x;
  for (let n = 200; n >= 1; n--) tail = x + n / 2 / tail;
  return 1 / (Math.sqrt(Math.PI) * tail);
}
