import { type ConeRange, coneRange } from "./cone-range.ts";

/** What a firing is for. "once-fired" is raw ware with its glaze on. */
export const FIRING_KINDS = ["bisque", "glaze", "once-fired", "lustre"] as const;
export type FiringKind = (typeof FIRING_KINDS)[number];

export interface UsualRange {
  readonly kind: FiringKind;
  readonly name: string;
  readonly cones: ConeRange;
  readonly source: string;
}

const practice = "common practice, no source";
const chartLabels = "labels on a retail copy of the cone chart: 018 china paint, 019 lustres, 020 decals; 590–800 °C";

/** Where potters usually fire each kind. A glaze's or a body's own range goes before these. */
export const USUAL_RANGES: readonly UsualRange[] = [
  { kind: "bisque", name: "bisque", cones: coneRange("08", "03"), source: practice },
  { kind: "glaze", name: "earthenware glaze", cones: coneRange("06", "02"), source: practice },
  { kind: "glaze", name: "mid-range glaze", cones: coneRange("4", "7"), source: practice },
  { kind: "glaze", name: "stoneware and porcelain glaze", cones: coneRange("8", "11"), source: practice },
  { kind: "once-fired", name: "once-fired ware", cones: coneRange("06", "11"), source: practice },
  { kind: "lustre", name: "lustre, china paint and decals", cones: coneRange("022", "015"), source: chartLabels },
];

/** The cones usual for a kind, from its coolest usual range to its hottest. */
export function usualCones(kind: FiringKind): ConeRange {
  const ranges = USUAL_RANGES.filter((range) => range.kind === kind).map((range) => range.cones);
  const [first, last] = [ranges[0] as ConeRange, ranges.at(-1) as ConeRange];
  return coneRange(first.coolest, last.hottest);
}
