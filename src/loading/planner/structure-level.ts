import type { StackHeight } from "./post-stacks.ts";
import type { Seat } from "./seat.ts";

/** One level of a structure: which shelf, on what height of posts, and how tall ware may be that stands on it. */
export interface StructureLevel {
  readonly seat: Seat;
  readonly height: StackHeight;
  readonly topMm: number;
  /** Tallest piece, cookie included, that keeps headroom or the lid's clearance. */
  readonly clearMm: number;
}
