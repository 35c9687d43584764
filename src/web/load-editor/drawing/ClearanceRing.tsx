import { memo } from "react";
import type { Ware } from "../../../ware/ware.ts";
import { Mark, outlineNodes } from "./PieceFromAbove.tsx";
import styles from "./Ring.module.css";

interface RingProps {
  readonly ware: Ware;
  /** How far others keep from it. */
  readonly gapMm: number;
}

/**
 * The room a piece keeps about itself, about its own axis, unturned: its outline swollen by the gap. Whatever holds it
 * says by `data-answer` whether the rules are kept there ("keeps") or not ("breaks").
 */
export const ClearanceRing = memo(function ClearanceRing({ ware, gapMm }: RingProps) {
  const outline = outlineNodes(ware);
  // A line twice as wide as the gap, drawn along the outline, ends a gap outside of it; a wider one beneath is its rim.
  return (
    <g className={styles.ring}>
      <g className={styles.rim} strokeWidth={2 * gapMm + 2.4}>
        {outline.map((node, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a solid's parts have no names and never change places
          <Mark key={i} node={node} name={undefined} />
        ))}
      </g>
      <g className={styles.room} strokeWidth={2 * gapMm}>
        {outline.map((node, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a solid's parts have no names and never change places
          <Mark key={i} node={node} name={undefined} />
        ))}
      </g>
    </g>
  );
});
