/** A cone stands 8° off upright and is down when its tip points 90° further. */
const HALF_LEAN = Math.tan((4 * Math.PI) / 180);
const STEEPNESS = 2.66;
const FLAT_DEG = 90;

/**
 * How far a cone has bent, degrees from upright: tan(θ/2) = tan 4° · exp(2.66 W), 8° at first and 90° when it is down.
 * It stays at 90, its tip resting on the plaque.
 *
 * The law is derived, not published: the viscous fall of a leaning rod under its own weight, made to reach 90° at
 * W = 1. Test beside it: the last hours of the fall as a cone maker's engineer described them (mailing list, 3 January 2003).
 */
export function bendDeg(work: number): number {
  const degrees = (2 * Math.atan(HALF_LEAN * Math.exp(STEEPNESS * Math.max(0, work))) * 180) / Math.PI;
  return work >= 1 ? FLAT_DEG : Math.min(FLAT_DEG, degrees);
}
