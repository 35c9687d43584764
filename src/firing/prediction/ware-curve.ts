import type { Curve } from "../heat-work/curve.ts";
import type { SimulatedFiring } from "../thermal/fire.ts";
import type { ThermalLoad } from "../thermal/kiln-network.ts";

/**
 * The ware's mean temperature in a simulated firing: every level that holds ware counts alike. Where nothing is loaded it
 * is the probe's.
 */
export function wareCurve(firing: SimulatedFiring, load: ThermalLoad): Curve {
  const { minutes, probeC, levelC } = firing;
  const loaded = levelC.filter((_, level) => (load.levels[level]?.wareKg ?? 0) > 0);
  if (loaded.length === 0) return { minutes, tempC: probeC };
  const tempC = minutes.map((_, i) => loaded.reduce((sum, level) => sum + (level[i] as number), 0) / loaded.length);
  return { minutes, tempC };
}
