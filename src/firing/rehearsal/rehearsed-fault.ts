/** What may go wrong in a rehearsed firing, in the words by which it is asked for. */
export const REHEARSED_FAULTS = ["stall", "silence", "slipped", "jump", "overshoot"] as const;
export type RehearsedFault = (typeof REHEARSED_FAULTS)[number];

/** When a fault begins, as a share of the programme's highest target, and how long it lasts. */
export interface FaultTimes {
  readonly fromShareOfPeak: number;
  readonly lastsMin: number;
}

/** Well into the climb, where they matter most; long enough for a watch to notice by its own thresholds, and to see it end. */
export const FAULT_TIMES: Readonly<Record<RehearsedFault, FaultTimes>> = {
  stall: { fromShareOfPeak: 0.8, lastsMin: 100 },
  silence: { fromShareOfPeak: 0.5, lastsMin: 45 },
  slipped: { fromShareOfPeak: 0.75, lastsMin: 50 },
  jump: { fromShareOfPeak: 0.6, lastsMin: 4 },
  overshoot: { fromShareOfPeak: 0.995, lastsMin: 180 },
};

/** What the elements give while it stalls, as a share: one circuit of three. */
export const STALLED_SHARE = 0.33;
/** What a slipped probe reads of what its place has, as a share of the kiln's rise over the room. */
export const SLIPPED_SHARE = 0.8;
/** How far the reading jumps, °C. */
export const JUMP_C = 75;
/** How far over its highest target it may go before somebody is at its isolator, °C. */
export const OVERSHOT_C = 35;
