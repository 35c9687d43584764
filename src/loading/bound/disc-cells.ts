/**
 * How much of a round shelf discs must take, waste between them counted in.
 *
 * THEOREM. Let n ≥ 2 discs with radii ρ₁ … ρₙ lie in a disc M of radius R, no two overlapping. For all λ ≥ 0 and μ,
 *
 *   Σ a(ρᵢ) ≤ πR² − 6λ − 2πμ,    a(ρ) = min( inner(ρ), edge(ρ) ),
 *   inner(ρ) = min over m ≥ 3 of         ρ²·m·tan(π/m) + λ(m − 6),
 *   edge(ρ)  = min over m ≥ 0, 0 < ψ ≤ 2π of  S(ψ) + ρ²·m·tan((2π − Φ(ψ))/2m) + λ(m − 4) − μψ,
 *   S(ψ) = R/2·(Rψ − 2(R − ρ)·sin(ψ/2)),   Φ(ψ) = 2·atan2(R·sin(ψ/2), R·cos(ψ/2) − (R − ρ)).
 *
 * PROOF. Cut M into the discs' power cells (Aurenhammer, SIAM J. Comput. 16, 1987; from memory): n convex cells, each
 * holding its own disc, since a point of one disc has power ≤ 0 to it and ≥ 0 to all others. Cell i has mᵢ straight edges
 * and jᵢ arcs of M's edge. All its corners have degree ≥ 3, so Euler's formula gives at most 3n − 3 edges, arcs counted;
 * each straight edge belongs to two cells and each arc to one, so Σ(mᵢ + 2jᵢ) ≤ 6n − 6. The arcs' angles at M's centre
 * add to 2π. Seen from its disc's centre, a straight edge at distance ≥ ρ that spans an angle φ cuts off at least
 * ρ²·tan(φ/2), and tan is convex: equal angles are the least (L. Fejes Tóth's argument, Lagerungen in der Ebene, 1953, from
 * memory). Arcs of total angle ψ cut off at least S(ψ) and span at most Φ(ψ), both extreme where the disc touches M's
 * edge in the middle of the arc. So the cell's area is at least that of `inner` or `edge` without their λ and μ; add λ
 * times (Σ(mᵢ + 2jᵢ) − 6n + 6 ≤ 0) and μ times (2π − Σψᵢ = 0). ∎
 */
export interface CellPrices {
  /** R: the shelf's radius with half the gap. */
  readonly radiusMm: number;
  /** λ: what one side of a cell is reckoned at, mm². */
  readonly sideMm2: number;
  /** μ: what one radian of the shelf's edge is reckoned at, mm². */
  readonly edgeMm2: number;
}

/** πR² − 6λ − 2πμ: what the discs' `cellMm2` cannot exceed together, where there are two or more. */
export const cellsAtMostMm2 = ({ radiusMm, sideMm2, edgeMm2 }: CellPrices): number =>
  Math.PI * radiusMm * radiusMm - 6 * sideMm2 - 2 * Math.PI * edgeMm2;

const MOST_SIDES = 40;
const BISECTIONS = 30;
// What the bisection may miss of a minimum, of the disc's area: far more than it does.
const SAFE_SHARE = 1e-7;

/** a(ρ) of the theorem, mm². */
export function cellMm2(rhoMm: number, prices: CellPrices): number {
  return Math.min(innerMm2(rhoMm, prices), edgeCellMm2(rhoMm, prices)) - SAFE_SHARE * rhoMm * rhoMm;
}

function innerMm2(rho: number, { sideMm2 }: CellPrices): number {
  let least = Number.POSITIVE_INFINITY;
  for (let m = 3; m <= MOST_SIDES; m++) {
    const area = rho * rho * m * Math.tan(Math.PI / m) + sideMm2 * (m - 6);
    if (area > least) break;
    least = area;
  }
  // Convex in m: once it rises it goes on rising.
  return least;
}

function edgeCellMm2(rho: number, { radiusMm, sideMm2, edgeMm2 }: CellPrices): number {
  const away = radiusMm - rho;
  if (away < 0) return Number.POSITIVE_INFINITY;
  let least = Number.POSITIVE_INFINITY;
  for (let m = 0; m <= MOST_SIDES; m++) {
    const at = (psi: number): number => {
      const half = psi / 2;
      const left = Math.PI - Math.atan2(radiusMm * Math.sin(half), radiusMm * Math.cos(half) - away);
      const sides = m === 0 ? (left > 1e-9 ? Number.POSITIVE_INFINITY : 0) : left / m;
      if (sides >= Math.PI / 2) return Number.POSITIVE_INFINITY;
      const arc = (radiusMm / 2) * (radiusMm * psi - 2 * away * Math.sin(half));
      return arc + rho * rho * m * Math.tan(sides) + sideMm2 * (m - 4) - edgeMm2 * psi;
    };
    const best = m === 0 ? at(2 * Math.PI) : leastOf(at);
    if (best > least && m > 2) break;
    least = Math.min(least, best);
  }
  return least;
}

const SHRINK = (Math.sqrt(5) - 1) / 2;

/** The least of a convex function over (0, 2π], infinite perhaps toward 0. */
function leastOf(at: (psi: number) => number): number {
  let low = 0;
  let high = 2 * Math.PI;
  let left = high - SHRINK * (high - low);
  let right = low + SHRINK * (high - low);
  let atLeft = at(left);
  let atRight = at(right);
  for (let step = 0; step < BISECTIONS; step++) {
    if (atLeft >= atRight) {
      low = left;
      left = right;
      atLeft = atRight;
      right = low + SHRINK * (high - low);
      atRight = at(right);
    } else {
      high = right;
      right = left;
      atRight = atLeft;
      left = high - SHRINK * (high - low);
      atLeft = at(left);
    }
  }
  return Math.min(atLeft, atRight, at(2 * Math.PI));
}
