/** Residuals, each divided by its own sigma, at a point. The same number of them everywhere. */
export type Residuals = (point: Float64Array) => Float64Array;

/** Columns of derivatives: one array of residuals' changes for each coordinate. */
export type Jacobian = readonly Float64Array[];

/** A step in sigmas of the priors: far above the stepping error of the model, well below what bends the answer. */
const DIFFERENCE = 0.05;
const MOST_ROUNDS = 30;
const MOST_TRIALS = 60;
const FIRST_DAMPING = 1e-3;
const STILL = 1e-3;
/** No parameter moves by more than this many sigmas in a round: far off, the slopes there say little. */
const LONGEST_STEP = 1.5;

export interface LeastSquares {
  readonly point: Float64Array;
  readonly residuals: Float64Array;
  readonly jacobian: Jacobian;
  readonly rounds: number;
  /** False where it ran out of rounds. */
  readonly settled: boolean;
}

/**
 * Levenberg and Marquardt's method on |residuals|² + |point|²: the point counts in sigmas of its prior, so the second
 * term is the prior. Starts at zero, the prior's middle. Derivatives by differences.
 */
export function leastSquares(residuals: Residuals, size: number): LeastSquares {
  let point = new Float64Array(size);
  let found = residuals(point);
  let cost = squares(found) + squares(point);
  let damping = FIRST_DAMPING;
  let harder = 2;
  let rounds = 0;
  let jacobian = differences(residuals, point, found);
  for (let trial = 1; trial <= MOST_TRIALS; trial++) {
    const { step, promised } = newtonStep(jacobian, found, point, damping);
    const next = point.map((each, i) => each + (step[i] as number));
    const there = residuals(next);
    const won = cost - squares(there) - squares(next);
    if (squares(step) < STILL && Math.abs(won) < STILL * (1 + cost)) {
      const better = won > 0;
      return { point: better ? next : point, residuals: better ? there : found, jacobian, rounds, settled: true };
    }
    if (!(won > 0)) {
      damping *= harder;
      harder *= 2;
      continue;
    }
    // Nielsen's rule: the better a step kept its promise, the bolder the next.
    damping *= Math.max(1 / 3, 1 - (2 * Math.min(1, won / promised) - 1) ** 3);
    harder = 2;
    point = next;
    found = there;
    cost -= won;
    jacobian = differences(residuals, point, found);
    if (++rounds === MOST_ROUNDS) break;
  }
  return { point, residuals: found, jacobian, rounds, settled: false };
}

/** Derivatives of some residuals at a point, by differences forward. */
export function differences(
  of: Residuals,
  point: Float64Array,
  there = of(point),
  apartOf: (coordinate: number) => number = () => DIFFERENCE,
): Jacobian {
  return Array.from(point, (_, i) => {
    const apart = apartOf(i);
    const moved = point.slice();
    moved[i] = (point[i] as number) + apart;
    const found = of(moved);
    return found.map((each, n) => (each - (there[n] as number)) / apart);
  });
}

/** What some evidence tells of the parameters, added to what the prior does: JᵀJ + 1, Fisher's information. */
export function information(jacobians: readonly Jacobian[], size: number): Float64Array[] {
  return Array.from({ length: size }, (_, i) =>
    Float64Array.from({ length: size }, (_, j) =>
      jacobians.reduce((sum, each) => sum + dot(each[i] as Float64Array, each[j] as Float64Array), i === j ? 1 : 0),
    ),
  );
}

/** The inverse of a symmetric matrix that is above zero in every direction, by Cholesky's method. */
export function inverse(matrix: readonly Float64Array[]): Float64Array[] {
  const root = cholesky(matrix);
  const columns = matrix.map((_, i) => {
    const unit = new Float64Array(matrix.length);
    unit[i] = 1;
    return solved(root, unit);
  });
  return columns;
}

/** What a Jacobian's quantities are unsure by, given the covariance of the coordinates: one sigma each. */
export function spread(jacobian: Jacobian, covariance: readonly Float64Array[]): Float64Array {
  return (jacobian[0] as Float64Array).map((_, n) => {
    let sum = 0;
    covariance.forEach((row, i) => {
      row.forEach((value, j) => {
        sum += value * ((jacobian[i] as Float64Array)[n] as number) * ((jacobian[j] as Float64Array)[n] as number);
      });
    });
    return Math.sqrt(Math.max(0, sum));
  });
}

function newtonStep(jacobian: Jacobian, found: Float64Array, point: Float64Array, damping: number) {
  const matrix = information([jacobian], point.length);
  const undamped = matrix.map((row, i) => row[i] as number);
  matrix.forEach((row, i) => {
    row[i] = (row[i] as number) * (1 + damping);
  });
  const slope = point.map((each, i) => -each - dot(jacobian[i] as Float64Array, found));
  const step = solved(cholesky(matrix), slope);
  const longest = step.reduce((most, each) => Math.max(most, Math.abs(each)), 0);
  const share = longest > LONGEST_STEP ? LONGEST_STEP / longest : 1;
  const shortened = step.map((each) => each * share);
  // What the slopes promise of a full step; a shortened one is held to its share.
  const promised =
    share *
    (dot(step, slope) + damping * step.reduce((sum, each, i) => sum + each * each * (undamped[i] as number), 0));
  return { step: shortened, promised };
}

function cholesky(matrix: readonly Float64Array[]): Float64Array[] {
  const root = matrix.map((row) => new Float64Array(row.length));
  matrix.forEach((row, i) => {
    const own = root[i] as Float64Array;
    for (let j = 0; j <= i; j++) {
      const other = root[j] as Float64Array;
      let sum = row[j] as number;
      for (let k = 0; k < j; k++) sum -= (own[k] as number) * (other[k] as number);
      own[j] = i === j ? Math.sqrt(sum) : sum / (other[j] as number);
    }
  });
  return root;
}

function solved(root: readonly Float64Array[], right: Float64Array): Float64Array {
  const x = right.slice();
  const at = (i: number, j: number): number => (root[i] as Float64Array)[j] as number;
  for (let i = 0; i < x.length; i++) {
    for (let j = 0; j < i; j++) x[i] = (x[i] as number) - at(i, j) * (x[j] as number);
    x[i] = (x[i] as number) / at(i, i);
  }
  for (let i = x.length - 1; i >= 0; i--) {
    for (let j = i + 1; j < x.length; j++) x[i] = (x[i] as number) - at(j, i) * (x[j] as number);
    x[i] = (x[i] as number) / at(i, i);
  }
  return x;
}

const dot = (a: Float64Array, b: Float64Array): number => a.reduce((sum, each, i) => sum + each * (b[i] as number), 0);
export const squares = (a: Float64Array): number => dot(a, a);
