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

// The search for a least may stop short of it by this share of ρ²; what it may have missed is taken off.
const MISSED_SHARE = 1e-4;

/** πR² − 6λ − 2πμ: what the discs' `cellMm2` cannot exceed together, where there are two or more. */
export const cellsAtMostMm2 = ({ radiusMm, sideMm2, edgeMm2 }: CellPrices): number =>
  Math.PI * radiusMm * radiusMm - 6 * sideMm2 - 2 * Math.PI * edgeMm2;

const MOST_SIDES = 40;
const MOST_STEPS = 60;

/** a(ρ) of the theorem, mm²; never too large. */
export function cellMm2(rhoMm: number, prices: CellPrices): number {
  return Math.min(innerMm2(rhoMm, prices), edgeMm2(rhoMm, prices));
}

function innerMm2(rho: number, { sideMm2 }: CellPrices): number {
  let least = Number.POSITIVE_INFINITY;
  for (let m = 3; m <= MOST_SIDES; m++) {
    const area = rho * rho * m * Math.tan(Math.PI / m) + sideMm2 * (m - 6);
    // Convex in m: once it rises it goes on rising.
    if (area > least) break;
    least = area;
  }
  return least;
}

function edgeMm2(rho: number, prices: CellPrices): number {
  const { radiusMm, sideMm2, edgeMm2 } = prices;
  if (rho > radiusMm) return Number.POSITIVE_INFINITY;
  let least = Number.POSITIVE_INFINITY;
  for (let m = 1; m <= MOST_SIDES; m++) {
    const area = leastOverArcs(rho, m, prices) + sideMm2 * (m - 4);
    // Convex in m: m·tan(x/m) is so in m and x together, and x in ψ.
    if (area > least) break;
    least = area;
  }
  // With no straight edge the arc goes all the way round.
  return Math.min(least, Math.PI * radiusMm * radiusMm - 4 * sideMm2 - 2 * Math.PI * edgeMm2);
}

/**
 * The least over ψ of S(ψ) + ρ²·m·tan((2π − Φ(ψ))/2m) − μψ. It is convex: S is, and Φ is concave. So halving on its slope
 * finds the least, and the slope there says how much can be missed.
 */
function leastOverArcs(rho: number, m: number, { radiusMm, edgeMm2 }: CellPrices): number {
  const away = radiusMm - rho;
  let low = 0;
  let high = 2 * Math.PI;
  for (let step = 0; ; step++) {
    const psi = (low + high) / 2;
    const cos = Math.cos(psi / 2);
    const sin = Math.sin(psi / 2);
    const perSide = (Math.PI - Math.atan2(radiusMm * sin, radiusMm * cos - away)) / m;
    if (perSide >= Math.PI / 2) {
      // Too little arc for so few straight edges.
      low = psi;
      if (step > MOST_STEPS) return Number.POSITIVE_INFINITY;
      continue;
    }
    const tan = Math.tan(perSide);
    const spanSlope =
      (radiusMm * (radiusMm - away * cos)) / (radiusMm * radiusMm + away * away - 2 * radiusMm * away * cos);
    const slope = (radiusMm / 2) * (radiusMm - away * cos) - (rho * rho * (1 + tan * tan) * spanSlope) / 2 - edgeMm2;
    if (slope > 0) high = psi;
    else low = psi;
    const missed = Math.abs(slope) * (high - low);
    if (missed < MISSED_SHARE * rho * rho || step > MOST_STEPS) {
      return (radiusMm / 2) * (radiusMm * psi - 2 * away * sin) + rho * rho * m * tan - edgeMm2 * psi - missed;
    }
  }
}
