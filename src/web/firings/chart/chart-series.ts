import type { ConeName } from "../../../firing/cones/cone.ts";
import { ladderOf } from "../../../firing/cones/cone.ts";
import type { HeatWork } from "../../../firing/heat-work/heat-work.ts";
import { equivalentC } from "../../../firing/heat-work/ladder-position.ts";

/** How a line is drawn. Dashes and weight tell them apart, not colour alone. */
export type LineLook = "programme" | "foretold" | "rest" | "measured" | "level" | "heat work";

/** A line of the chart: minutes since the start and °C. A temperature that is no number is a gap. */
export interface ChartSeries {
  readonly name: string;
  readonly look: LineLook;
  readonly minutes: ArrayLike<number>;
  readonly tempC: ArrayLike<number>;
}

/** A moment of the firing, marked on the chart and told in its table. */
export interface ChartMark {
  /** In a word or two, for the table: "cone 6 down", "look at the cones", "shut off". */
  readonly what: string;
  readonly atMin: number;
  /** Where on the curve; a line across the height where left out. */
  readonly tempC?: number | undefined;
  /** On the chart itself, where there is room for little: "6". Left out: only the line or dot. */
  readonly short?: string | undefined;
  readonly kind?: "cone" | "moment" | "now" | "trouble" | undefined;
}

/**
 * Heat work so far as a line: through the moments at which cones fall. It stands on the scale of temperature, each cone
 * where a steady 60 °C/h brings it down, so that the two scales of the chart are one.
 */
export function heatWorkSeries(
  reached: Pick<HeatWork, "cones">,
  name = "heat work, as cones",
  untilMin = 0,
): ChartSeries {
  const fallen = reached.cones.flatMap(({ cone, downAtMin }) =>
    downAtMin === null ? [] : [{ minute: downAtMin, tempC: coneC(cone) }],
  );
  fallen.sort((a, b) => a.minute - b.minute || a.tempC - b.tempC);
  const last = fallen.at(-1);
  if (last && untilMin > last.minute) fallen.push({ minute: untilMin, tempC: last.tempC });
  return {
    name,
    look: "heat work",
    minutes: fallen.map(({ minute }) => minute),
    tempC: fallen.map(({ tempC }) => tempC),
  };
}

/** Where a cone stands on the chart's second scale, °C. */
export const coneC = (cone: ConeName): number => equivalentC(ladderOf(cone));
