import { AT_REST, type ParameterValues } from "../../firing/calibration/parameters.ts";

/**
 * What the demo's kilns are in truth, which nobody in the studio knows: what they are described with, times these. The
 * firings of the demo are reckoned with them; its calibration is learned from what those firings showed.
 */
export const DEMO_TRUTH: Readonly<Record<"big" | "small", ParameterValues>> = {
  // Walls and lid a little worse than their class, new elements a little strong, the bottom cool, the probe a little high.
  big: {
    ...AT_REST,
    wallFactor: 1.07,
    powerFactor: 1.02,
    leakFactor: 1.15,
    probeOffsetC: 3,
    tilt: 0.06,
    middleShare: 0.03,
  },
  small: { ...AT_REST, wallFactor: 0.95, powerFactor: 1.02, probeOffsetC: -2 },
};
