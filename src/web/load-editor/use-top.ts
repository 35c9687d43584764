import { type RefObject, useLayoutEffect } from "react";

/**
 * Tells an element, as `--top`, how far down the page it begins, so that it can take what is left of the window: notices
 * above it come and go.
 */
export function useTop(element: RefObject<HTMLElement | null>): void {
  useLayoutEffect(() => {
    const measure = (): void => {
      const here = element.current;
      if (!here) return;
      const top = here.getBoundingClientRect().top + scrollY;
      here.style.setProperty("--top", `${Math.round(top)}px`);
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(document.body);
    for (const above of element.current?.parentElement?.children ?? []) observer.observe(above);
    const main = element.current?.closest("main");
    for (const above of main?.children ?? []) observer.observe(above);
    return () => observer.disconnect();
  });
}
