import { watched } from "../studio/watched.ts";

/** A short notice. */
export interface Notice {
  readonly id: number;
  readonly message: string;
  readonly undo: (() => void) | null;
  /** What the button says; "Undo" unless it does something else. */
  readonly undoLabel: string;
}

const SHOWN_MS = 7000;
let count = 0;

/** The notice that shows now. */
export const notice = watched<Notice | null>(null);
let timer: ReturnType<typeof setTimeout> | undefined;

/**
 * Tells her something in a few words, for a short while: "Took out the bowl".
 *
 * @param undo takes it back; a button is shown for it
 */
export function tell(message: string, undo?: () => void, undoLabel = "Undo"): void {
  count += 1;
  notice.set({ id: count, message, undo: undo ?? null, undoLabel });
  letGoLater();
}

/** Keeps the notice while she is at it. */
export function holdNotice(): void {
  clearTimeout(timer);
}

/** Lets the notice go a little later. */
export function letGoLater(): void {
  clearTimeout(timer);
  timer = setTimeout(() => notice.set(null), SHOWN_MS);
}
