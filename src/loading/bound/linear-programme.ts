const TINY = 1e-9;

/** Greatest gains·x where every row·x ≤ its most and x ≥ 0; no `most` below zero. */
export interface Programme {
  readonly rows: readonly Float64Array[];
  readonly most: readonly number[];
  readonly gains: Float64Array;
}

export interface Solved {
  /** Best x found: the best there is, unless the pivots ran out. */
  readonly answer: Float64Array;
  /** What one more of each row's `most` would bring; never below zero. */
  readonly prices: Float64Array;
  /** Numbers touched, to count work by. */
  readonly work: number;
}

/**
 * Solves a small linear programme by the simplex method on a condensed table (Dantzig, Linear Programming and Extensions,
 * 1963): the largest gain enters, the tightest row leaves. Rounding is of no account to the bound: see `safeBound`.
 */
export function solve({ rows, most, gains }: Programme, mostPivots: number): Solved {
  const m = rows.length;
  const n = gains.length;
  const width = n + 1;
  // One row a constraint, its `most` last; beneath them what each column still costs.
  const table = new Float64Array((m + 1) * width);
  // Which unknown stands for each column and row: those below n are x, the others what a row has to spare.
  const columnOf = Int32Array.from({ length: n }, (_, j) => j);
  const rowOf = Int32Array.from({ length: m }, (_, i) => n + i);
  for (let i = 0; i < m; i++) {
    table.set(rows[i]!, i * width);
    table[i * width + n] = most[i]!;
  }
  for (let j = 0; j < n; j++) table[m * width + j] = -gains[j]!;
  let pivots = 0;
  for (; pivots < mostPivots; pivots++) {
    const column = lowest(table, m * width, n);
    if (column < 0) break;
    const row = tightest(table, m, width, column);
    if (row < 0) break;
    exchange(table, m, width, row, column);
    const leaving = rowOf[row]!;
    rowOf[row] = columnOf[column]!;
    columnOf[column] = leaving;
  }
  const answer = new Float64Array(n);
  const prices = new Float64Array(m);
  rowOf.forEach((unknown, i) => {
    if (unknown < n) answer[unknown] = table[i * width + n]!;
  });
  columnOf.forEach((unknown, j) => {
    if (unknown >= n) prices[unknown - n] = Math.max(0, table[m * width + j]!);
  });
  return { answer, prices, work: (pivots + 2) * (m + 1) * width };
}

function lowest(table: Float64Array, from: number, n: number): number {
  let column = -1;
  let least = -TINY;
  for (let j = 0; j < n; j++) {
    if (table[from + j]! >= least) continue;
    least = table[from + j]!;
    column = j;
  }
  return column;
}

function tightest(table: Float64Array, m: number, width: number, column: number): number {
  let row = -1;
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i < m; i++) {
    const at = table[i * width + column]!;
    if (at <= TINY) continue;
    const ratio = table[i * width + width - 1]! / at;
    if (ratio >= least) continue;
    least = ratio;
    row = i;
  }
  return row;
}

/** Lets a row's and a column's unknowns change places. */
function exchange(table: Float64Array, m: number, width: number, row: number, column: number): void {
  const from = row * width;
  const scale = 1 / table[from + column]!;
  table[from + column] = 1;
  for (let j = 0; j < width; j++) table[from + j] = table[from + j]! * scale;
  for (let i = 0; i <= m; i++) {
    const start = i * width;
    const times = table[start + column]!;
    if (i === row || times === 0) continue;
    table[start + column] = 0;
    for (let j = 0; j < width; j++) table[start + j] = table[start + j]! - times * table[from + j]!;
  }
}

/**
 * What no x with 0 ≤ x ≤ `upTo` can exceed, whatever the prices: gains·x ≤ prices·most + Σ max(0, gain − prices·column)·upTo
 * (weak duality). So a bound holds to the last digit even where the simplex method erred.
 */
export function safeBound({ rows, most, gains }: Programme, prices: Float64Array, upTo: Float64Array): number {
  const left = gains.slice();
  let bound = 0;
  rows.forEach((row, i) => {
    const price = prices[i]!;
    if (price === 0) return;
    bound += price * most[i]!;
    for (let j = 0; j < left.length; j++) left[j] = left[j]! - price * row[j]!;
  });
  for (let j = 0; j < left.length; j++) if (left[j]! > 0) bound += left[j]! * upTo[j]!;
  return bound;
}
