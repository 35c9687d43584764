import type { Furniture } from "./furniture.ts";
import type { KilnFile } from "./kiln.ts";

/** A generic size of small electric kiln to start from, with the furniture such a kiln usually has. */
export interface ReadyMadeKiln {
  readonly id: string;
  /** What it is in plain words, without its size: "Eight-sided". Also its name until she gives it another. */
  readonly words: string;
  readonly kiln: KilnFile;
  readonly furniture: Furniture;
}
