import type { ConeName } from "../cones/cone.ts";
import type { Programme } from "../programme/programme.ts";
import type { ThermalLoad } from "../thermal/kiln-network.ts";

/** What the elements did over a stretch of a firing: the share of time that they were on, or their mean power. */
export type PowerReading =
  | { readonly fromMin: number; readonly toMin: number; readonly shareOn: number }
  | { readonly fromMin: number; readonly toMin: number; readonly powerW: number };

/** A cone that stood on a shelf: bent so far, 8° upright to 90° down; or the place on the ladder (6 is 27, 6½ is 27.5). */
export type ShelfCone =
  | { readonly level: number; readonly cone: string; readonly bendDeg: number }
  | { readonly level: number; readonly ladder: number };

/** One firing, as it was measured. Minutes count from the first reading; anything but the log may be missing. */
export interface FiringEvidence {
  /** The controller's probe: at least 20 readings, in °C; a dropped reading is NaN. */
  readonly log: { readonly minutes: ArrayLike<number>; readonly tempC: ArrayLike<number> };
  /**
   * When the elements went off for good. Where it is not given: the peak of the log, or the last power that was read
   * after it. A slow cooling without power readings needs it.
   */
  readonly shutOffMin?: number;
  readonly power?: readonly PowerReading[];
  /** What the controller was running, where the log is its own: shows where it ran behind, all elements on. */
  readonly programme?: Pick<Programme, "segments">;
  /** Stretches in which the elements were on all the time, where they are known; else they are read off the programme. */
  readonly fullPower?: readonly { readonly fromMin: number; readonly toMin: number }[];
  readonly cones?: readonly ShelfCone[];
  /** Energy of the whole firing, from a meter. */
  readonly kWh?: number;
  /** Where this firing's load was another than the one asked about. */
  readonly load?: ThermalLoad;
}

/** Kinds of evidence, as they teach. */
export type EvidenceKind = "temperature" | "cooling" | "full power" | "power" | "cones" | "meter";

/**
 * How far a perfect set of parameters would still be from what is measured, one standard deviation. From the study
 * behind the priors (parameters.ts): judgement, no published source.
 */
export const NOISE = {
  /** The model's error in temperature, and how long it lasts. */
  tempC: 4,
  tempLastsMin: 30,
  /** Of full power, over half an hour. */
  powerShare: 0.03,
  coneC: 3,
  /** All cones of a firing together: 4 °C lasting half an hour, over the hour near the peak that heat work is made in. */
  conesTogetherC: 3,
  meterKWh: 0.3,
} as const;

/** A cone of a shelf once it was checked. */
export type CheckedCone =
  | { readonly level: number; readonly cone: ConeName; readonly bendDeg: number }
  | { readonly level: number; readonly ladder: number };
