import { type RefObject, useEffect } from "react";

/**
 * Tells the page, as `--tools`, how high the tools at the bottom of a screen are, so that a notice stands above them and
 * not over them.
 *
 * @param tools what is not to be covered
 */
export function useToolsBelow(tools: RefObject<HTMLElement | null>): void {
  useEffect(() => {
    const element = tools.current;
    if (!element) return;
    const { style } = document.documentElement;
    const observer = new ResizeObserver(() => style.setProperty("--tools", `${element.offsetHeight}px`));
    observer.observe(element);
    return () => {
      observer.disconnect();
      style.removeProperty("--tools");
    };
  }, [tools]);
}
