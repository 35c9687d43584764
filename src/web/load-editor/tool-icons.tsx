import { path } from "../parts/icons.tsx";

// Drawings for this screen alone, with the pen of the others.

export const TurnLeftIcon = path("M4.5 12a7.5 7.5 0 1 0 2.6-5.7M4.5 3v4h4");
export const TurnRightIcon = path("M19.5 12a7.5 7.5 0 1 1-2.6-5.7M19.5 3v4h-4");
/** Two pieces, each going where the other stands. */
export const SwapIcon = path("M4 8.5h14M14.5 4.5l4 4-4 4M20 15.5H6M9.5 11.5l-4 4 4 4");
/** Pieces one under the other, in words. */
export const ListIcon = path("M4 6.5h.01M8.5 6.5H20M4 12h.01M8.5 12H20M4 17.5h.01M8.5 17.5H20");
/** A shelf on two posts. */
export const ShelfIcon = path("M3 8h18v3H3zM6 11v9M18 11v9M3.5 20.5h17");
