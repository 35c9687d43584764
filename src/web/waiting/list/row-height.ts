import { useSyncExternalStore } from "react";

// As wide as in WareRow.module.css: above this a row is one line of cells, below it two.
const TWO_LINES = "(max-width: 1119px)";

const onChange = (changed: () => void): (() => void) => {
  const query = matchMedia(TWO_LINES);
  query.addEventListener("change", changed);
  addEventListener("resize", changed);
  return () => {
    query.removeEventListener("change", changed);
    removeEventListener("resize", changed);
  };
};

/** How high a row is, in pixels: it grows with the size of type she has set. */
function rowHeight(): number {
  const type = Number.parseFloat(getComputedStyle(document.documentElement).fontSize) || 16;
  return Math.round(type * (matchMedia(TWO_LINES).matches ? 7.75 : 4.5));
}

export const useRowHeight = (): number => useSyncExternalStore(onChange, rowHeight);
