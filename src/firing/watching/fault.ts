import type { FollowedPlace } from "./followed-programme.ts";
import type { RecentReadings } from "./recent-readings.ts";

/** What can go wrong with a firing, or with what tells of it. */
export const FAULT_KINDS = ["jump", "dead probe", "slipped probe", "silence", "stalling", "overshoot"] as const;
export type FaultKind = (typeof FAULT_KINDS)[number];

/** One fault: begun once, ended once. Minutes on the readings' clock. */
export interface Fault {
  readonly kind: FaultKind;
  /** When it began, as far as the readings tell. */
  readonly sinceMin: number;
  /** When it was noticed. */
  readonly noticedMin: number;
  /** When it was over; null while it lasts. */
  readonly untilMin: number | null;
  /** What was found, in a few words and figures. */
  readonly found: string;
  /** For the potter: what it may be, and what to look at. Wareboard advises; it never switches a kiln. */
  readonly message: string;
}

/** A reading as the faults of a firing see it. */
export interface WatchedReading {
  readonly minute: number;
  readonly tempC: number;
  readonly place: FollowedPlace;
  /** The readings up to this one. */
  readonly recent: RecentReadings;
}

/** What was found where something is wrong. */
export interface Finding {
  readonly sinceMin: number;
  readonly found: string;
  readonly message: string;
}

/**
 * What a look at a reading says: this is wrong; this was wrong, and is over already; this is as it should be; or it cannot
 * be told from here.
 */
export type Sign =
  | ({ readonly is: "wrong" | "was wrong" } & Finding)
  | { readonly is: "fine" }
  | { readonly is: "untold" };

export const FINE: Sign = { is: "fine" };
export const UNTOLD: Sign = { is: "untold" };

/** Looks for one kind of fault. Every reading is shown to it, in order of time. */
export interface FaultLook {
  readonly kind: FaultKind;
  look(reading: WatchedReading): Sign;
}
