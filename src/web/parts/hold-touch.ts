/**
 * Keeps the page from scrolling under a finger while it holds something in an element: Chromium minds `touch-action` on
 * the parts of a drawing only now and then, and takes the drag away.
 *
 * @param isHeld whether something is held this moment
 * @returns stops listening
 */
export function holdTouch(
  element: Pick<EventTarget, "addEventListener" | "removeEventListener"> | null,
  isHeld: () => boolean,
): () => void {
  const hold = (event: Event): void => {
    if (isHeld() && event.cancelable) event.preventDefault();
  };
  // A listener that may prevent must say so, or the browser scrolls without asking it.
  element?.addEventListener("touchmove", hold, { passive: false });
  return () => element?.removeEventListener("touchmove", hold);
}
