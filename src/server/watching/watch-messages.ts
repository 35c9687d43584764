import type { WatchState } from "../../firing/watching/watch-firing.ts";
import type { WatchedFiring } from "../../studio/firings/watched-firing.ts";

/** What the watching thread is told. Minutes are since the firing's start. */
export type WatchTask =
  | { readonly kind: "begin"; readonly id: string; readonly firing: WatchedFiring }
  | { readonly kind: "read"; readonly id: string; readonly minutes: Float64Array; readonly tempC: Float64Array }
  | { readonly kind: "shut off"; readonly id: string; readonly minute: number }
  /** How does it stand, it being this minute now? */
  | { readonly kind: "look"; readonly id: string; readonly ask: number; readonly nowMin: number }
  | { readonly kind: "end"; readonly id: string };

/** What it answers to a look. */
export interface WatchLook {
  readonly ask: number;
  /** Null where it is not watched. */
  readonly state: WatchState | null;
  /** Why it cannot be watched; else null. */
  readonly failed: string | null;
}
