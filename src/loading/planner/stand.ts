import type { Chance } from "../../measures/seeded-chance.ts";
import type { Level, Placement } from "../load-plan.ts";
import type { LevelSpace } from "../packing/level-space.ts";
import type { Footing } from "./balance.ts";

/** Pieces that stay exactly where they stand. */
export interface Held {
  readonly kindOf: Int32Array;
  /** x, y from the stand's middle, and the turn in millimetres of swing, for each piece. */
  readonly places: Float64Array;
  /** The same as the given plan has them, word for word. */
  readonly placements: readonly Placement[];
}

/** One level as pieces meet it, however the kiln is stacked. All places on it are reckoned from its middle. */
export interface Stand {
  readonly middleX: number;
  readonly middleY: number;
  readonly areaMm2: number;
  /** How far from its middle a piece may be set down. */
  readonly spreadMm: number;
  /** The tallest piece, cookie included, that may stand anywhere on it. */
  readonly clearMm: number;
  readonly space: LevelSpace;
  readonly footing: Footing;
  readonly held: Held;
}

/** Shelves and posts in their places, ready to be loaded. */
export interface Frame {
  readonly stands: readonly Stand[];
  /** Each level's shelf and posts as a plan writes them. */
  readonly furniture: readonly Omit<Level, "placements">[];
  /** The same levels on posts moved elsewhere, or null where they cannot stand there; none where the furniture stays. */
  readonly shifted: ((chance: Chance) => Frame | null) | null;
}

export const NOTHING_HELD: Held = { kindOf: new Int32Array(0), places: new Float64Array(0), placements: [] };
