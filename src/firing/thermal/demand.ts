/** What the kiln is asked for in a step: a probe temperature to hold to, or a power to give. */
export interface Demand {
  /** The zone whose radiation temperature the controller steers by. */
  readonly zone: number;
  /** True to follow `wantedC` within `mostWatts`; false to give `watts` as they are. */
  steer: boolean;
  /** The wanted temperature of that zone at the two stages of the step, °C. */
  readonly wantedC: Float64Array;
  watts: number;
  mostWatts: number;
}
