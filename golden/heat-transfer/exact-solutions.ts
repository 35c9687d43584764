// Closed forms of heat conduction and radiation, written from the handbooks; nothing here is shared with the solver.
import { erf, erfc, scaledErfc } from "./error-function.ts";

/** Stefan and Boltzmann's constant, CODATA 2018, W/m²K⁴. */
export const STEFAN_BOLTZMANN = 5.670374419e-8;

/** Half-space from `startC`, its face at `faceC` from time 0 (Incropera §5.7; Carslaw and Jaeger §2.4). */
export const heldFace = (faceC: number, startC: number, depthM: number, reachM: number): number =>
  faceC + (startC - faceC) * erf(depthM / (2 * reachM));

/** Half-space whose face takes a steady flux (Carslaw and Jaeger §2.9). `reachM` is √(αt). */
export function givenFlux(startC: number, flux: number, k: number, depthM: number, reachM: number): number {
  const eta = depthM / (2 * reachM);
  return startC + (flux / k) * (2 * reachM * Math.exp(-eta * eta) * Math.sqrt(1 / Math.PI) - depthM * erfc(eta));
}

/** Half-space facing air through a film (Carslaw and Jaeger §2.7). */
export function throughFilm(startC: number, airC: number, filmPerK: number, depthM: number, reachM: number): number {
  const eta = depthM / (2 * reachM);
  const far = eta + filmPerK * reachM;
  // exp(hx/k + h²αt/k²)·erfc(far) = exp(−eta²)·[exp(far²)·erfc(far)]: the same, without its overflow.
  return startC + (airC - startC) * (erfc(eta) - Math.exp(-eta * eta) * scaledErfc(far));
}

/** Roots of ζ tan ζ = Bi, one in each branch, by bisection. */
function roots(biot: number, count: number): number[] {
  return Array.from({ length: count }, (_, n) => {
    let low = n * Math.PI;
    let high = low + Math.PI / 2;
    for (let i = 0; i < 80; i++) {
      const middle = (low + high) / 2;
      if (middle * Math.sin(middle) > biot * Math.cos(middle) === (n % 2 === 0)) high = middle;
      else low = middle;
    }
    return (low + high) / 2;
  });
}

/**
 * Plane wall, shut at x = 0, in air at x = 1 (Incropera §5.5, Eq. 5.39): the share of the first difference that is left, at x
 * and on the mean.
 */
export function planeWall(biot: number, fourier: number): { at: (x: number) => number; mean: number } {
  const terms = roots(biot, 60).map((zeta) => {
    const weight = (4 * Math.sin(zeta)) / (2 * zeta + Math.sin(2 * zeta));
    return { zeta, size: weight * Math.exp(-zeta * zeta * fourier) };
  });
  return {
    at: (x) => terms.reduce((sum, { zeta, size }) => sum + size * Math.cos(zeta * x), 0),
    mean: terms.reduce((sum, { zeta, size }) => sum + (size * Math.sin(zeta)) / zeta, 0),
  };
}

/**
 * Seconds in which a lump goes from one temperature to another by radiation alone (Incropera Eq. 5.18), kelvin.
 *
 * @param heatPerArea ρcV/A, J/m²K
 */
export function radiatingSeconds(
  emissivity: number,
  heatPerArea: number,
  fromK: number,
  toK: number,
  wallsK: number,
): number {
  const log = (kelvin: number): number => Math.log(Math.abs((wallsK + kelvin) / (wallsK - kelvin)));
  const change = log(toK) - log(fromK) + 2 * (Math.atan(toK / wallsK) - Math.atan(fromK / wallsK));
  return (change * heatPerArea) / (4 * STEFAN_BOLTZMANN * emissivity * wallsK ** 3);
}

/** Where a falling or rising function passes 0 between two places, by bisection. */
export function crossing(value: (x: number) => number, low: number, high: number): number {
  const rising = value(high) > 0;
  let [from, to] = [low, high];
  for (let i = 0; i < 100; i++) {
    const middle = (from + to) / 2;
    if (value(middle) > 0 === rising) to = middle;
    else from = middle;
  }
  return (from + to) / 2;
}
