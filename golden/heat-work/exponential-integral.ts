/**
 * ln(E2(x)·e^x) for x > 0, where E2(x) = ∫₁^∞ e^(−xt)/t² dt.
 *
 * Continued fraction by Lentz's method: Press et al., Numerical Recipes, §6.3 (`expint`, n = 2); Abramowitz and
 * Stegun 5.1.22. Good for x above 1; a cone's x is between 60 and 250.
 */
export function lnScaledE2(x: number): number {
  const order = 2;
  let b = x + order;
  let c = 1e300;
  let d = 1 / b;
  let h = d;
  for (let i = 1; i < 1000; i++) {
    const a = -i * (order - 1 + i);
    b += 2;
    d = 1 / (a * d + b);
    c = b + a / c;
    const change = c * d;
    h *= change;
    if (Math.abs(change - 1) < 1e-16) break;
  }
  return Math.log(h);
}

/**
 * ln of the work of a ramp from absolute zero: ∫ A·exp(−θ/T) dt, T climbing steadily to `tempK`. With T = tempK/u the
 * integral is tempK·E2(θ/tempK), whatever lies below the cone's range adding nothing.
 *
 * @param lnAPerSecond the cone's ln A, A in 1/s
 * @param thetaK the cone's E/R in K
 */
export function lnWorkOfRamp(lnAPerSecond: number, thetaK: number, cPerHour: number, tempK: number): number {
  const x = thetaK / tempK;
  return lnAPerSecond + Math.log((3600 / cPerHour) * tempK) + lnScaledE2(x) - x;
}

/** Where a steady ramp brings the work to 1, °C, by Newton's method on the closed form. */
export function endPointC(lnAPerSecond: number, thetaK: number, cPerHour: number): number {
  let tempK = thetaK / (lnAPerSecond + 6);
  for (let i = 0; i < 60; i++) {
    const lnWork = lnWorkOfRamp(lnAPerSecond, thetaK, cPerHour, tempK);
    const slope = Math.exp(lnAPerSecond - thetaK / tempK - lnWork) * (3600 / cPerHour);
    const step = Math.max(-100, Math.min(100, lnWork / slope));
    tempK -= step;
    if (Math.abs(step) < 1e-12 * tempK) break;
  }
  return tempK - 273.15;
}
