// What the server tells a browser that watches a firing. It only tells: nothing here switches a kiln. Every path is under /api.
//
//   GET  /firings/:id/watch             FiringWatch
//   GET  /firings/:id/watch/events      streams FiringWatch: at once, then whenever something of it is new
//
// Minutes count from the firing's start.

/** A firing as it stands now. */
export interface FiringWatch {
  /** The moment by the studio's clock: what is shown as "now" goes by this one, not by the browser's. */
  readonly now: string;
  /** How fast the studio's clock runs: 1, but for a rehearsal's. */
  readonly pace: number;
  readonly startedAt: string;
  /** The newest reading; null before the first. */
  readonly latest: { readonly at: string; readonly tempC: number; readonly probe: string } | null;
  /** Null before the first reading, or where it has no programme. */
  readonly place: WatchedPlace | null;
  /** Heat work so far: at the probe, then on each level of the load. Empty before the first reading. */
  readonly heat: readonly WatchedHeat[];
  /** All so far, in the order in which they were noticed. */
  readonly faults: readonly WatchedFault[];
  /** Null where there is no model of this firing: no load with a plan, or no reading yet. */
  readonly outlook: WatchedOutlook | null;
}

export interface WatchedPlace {
  /** From zero; the number of segments once the programme is over. */
  readonly segment: number;
  readonly doing: "ramp" | "wait" | "hold" | "over";
  readonly rising: boolean;
  /** °C an hour; null for as fast as the kiln can, in a hold, and once it is over. */
  readonly askedCPerHour: number | null;
  readonly wantedC: number | null;
  /** How far the kiln is short of it in the direction it goes, °C; below zero where it is past it. */
  readonly behindC: number;
  /** What is left of a hold, minutes. */
  readonly holdLeftMin: number | null;
}

export interface WatchedHeat {
  /** Of the plan, from zero at the bottom; null at the probe. */
  readonly level: number | null;
  /** Its place on the ladder of cones, as in `heatWork`. */
  readonly ladder: number;
  readonly coneDown: string | null;
  readonly next: string | null;
  /** 0 to 1. */
  readonly towardNext: number;
  /** The cones about the one wanted, the coolest first. */
  readonly cones: readonly { readonly cone: string; readonly bendDeg: number; readonly downAtMin: number | null }[];
}

export interface WatchedFault {
  readonly kind: string;
  readonly sinceMin: number;
  /** Null while it lasts. */
  readonly untilMin: number | null;
  readonly found: string;
  readonly message: string;
  /** True where the kiln may come to be hotter than it should be. */
  readonly isDanger: boolean;
}

/** A moment that is only foretold: the likeliest, and from when to when it may be. */
export interface WatchedMoment {
  readonly atMin: number;
  readonly fromMin: number;
  readonly toMin: number;
}

export interface WatchedOutlook {
  /** When the cone wanted goes down at the probe; null where it does not, or where none is wanted. */
  readonly cone: { readonly cone: string; readonly down: WatchedMoment | null } | null;
  readonly shutOff: WatchedMoment | null;
  /** When all is under each temperature a potter waits for, the hottest first. */
  readonly cool: readonly { readonly tempC: number; readonly means: string; readonly when: WatchedMoment | null }[];
  /** The rest as the model expects it at the probe, from now on: [minutes, °C]. */
  readonly curve: readonly (readonly [number, number])[];
  /** Energy so far and in the end; null where it cannot be told. */
  readonly kWh: { readonly soFar: number; readonly inAll: number } | null;
}
