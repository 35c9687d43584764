/** The time of every row, as its column has it. */
export interface LogTimes {
  readonly kind: "times";
  /** Minutes, of a clock or since the start; NaN where the cell is no time. */
  readonly minutes: Float64Array;
  /** What makes them: a clock that runs past midnight or jumps, or a count that does not. */
  readonly clock: "none" | "without-date" | "local" | "zoned";
  /** First date and time, ISO 8601, where it is sure. */
  readonly startedAt: string | null;
  readonly notes: readonly string[];
}
