import { AT_REST, type ParameterValues } from "../../firing/calibration/parameters.ts";

/**
 * What the demo's kilns are in truth, which nobody in the studio knows: what they are described with, times these. The
 * firings of the demo are reckoned with them; its calibration is learned from what those firings showed.
 */
export const DEMO_TRUTH: Readonly<Record<"big" | "small", ParameterValues>> = {
  // As its year left it (src/studio/year/worn-kiln.ts), with new elements: walls and lid worse than their class, the mains
  // higher than the plate's volts, the bottom cool, the probe a little high.
  big: {
    ...AT_REST,
    wallFactor: 1.08,
    powerFactor: 1.1,
    leakFactor: 1.29,
    probeOffsetC: 1,
    tilt: 0.05,
    middleShare: 0.03,
  },
  small: { ...AT_REST, wallFactor: 0.95, powerFactor: 1.02, probeOffsetC: -2 },
};
