import { createElement, memo } from "react";
import { wareSolid } from "../../../loading/solids/ware-solid.ts";
import { uprightMark } from "../../../sheets/drawing/outlines.ts";
import { toPaper } from "../../../sheets/drawing/to-paper.ts";
import type { SvgNode } from "../../../sheets/svg-writer.ts";
import type { Ware } from "../../../ware/ware.ts";
import { type KindSign, SIGN_PATHS } from "./kind-signs.ts";
import styles from "./Marks.module.css";

/** The chamber's own millimetres, the far side up. */
export const PLAN = toPaper(1);

interface PieceProps {
  readonly ware: Ware;
  readonly turnDeg: number;
  readonly number: number | null;
  readonly sign: KindSign | undefined;
  /** How large lettering is. Millimetres. */
  readonly letter: number;
  readonly isPinned?: boolean;
  readonly isIn?: boolean;
}

/** A piece seen from above about its own axis: outline, rim, foot, its number and its glaze's sign. */
export const PieceFromAbove = memo(function PieceFromAbove(props: PieceProps) {
  const { ware, turnDeg, number, sign, letter, isPinned = false, isIn = false } = props;
  const half = ware.diameterMm / 2;
  const size = Math.min(letter * 1.1, half * 0.95);
  const rim = ware.profile?.at(-1)?.[1] ?? 0;
  const foot = ware.profile?.[0]?.[1] ?? 0;
  return (
    <>
      <g data-turn="" transform={`rotate(${-turnDeg})`} className={styles[`colour${sign?.colour ?? 0}`]}>
        {outlineNodes(ware).map((node, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a solid's parts have no names and never change places
          <Mark key={i} node={node} name={styles.body} />
        ))}
        {rim > 0 && rim < half - 1 && <circle className={styles.rim} r={rim} />}
        {foot > 0 && <circle className={styles.foot} r={foot} />}
      </g>
      {number !== null && (
        <text className={styles.number} y={-size * 0.12} fontSize={size}>
          {number}
        </text>
      )}
      {sign && (
        <path
          className={styles.sign}
          d={SIGN_PATHS[sign.sign]}
          transform={`translate(0 ${number === null ? 0 : size * 0.72}) scale(${size * 0.2})`}
        />
      )}
      {isPinned && <PinSign x={-size * 0.75} y={-size * 0.78} size={size * 0.62} />}
      {isIn && (
        <path
          className={styles.in}
          d="M-1 0L-.2.9L1.2-.9"
          transform={`translate(${size * 0.8} ${-size * 0.7}) scale(${size * 0.28})`}
        />
      )}
    </>
  );
});

/** A piece's outline from above, unturned, about its axis; bodies over handles. */
export const outlineNodes = (ware: Ware): SvgNode[] =>
  [...wareSolid(ware, 0, 0, 0, 0).parts].reverse().map((part) => uprightMark(part, PLAN, {}));

/** One outline of the sheet's drawing, in this screen's look: its shape alone is taken. */
export function Mark({ node, name }: { readonly node: SvgNode; readonly name: string | undefined }) {
  const shape = Object.entries(node.attributes).filter(([attribute]) => SHAPE.has(attribute));
  return createElement(node.name, { ...Object.fromEntries(shape), className: name });
}

const SHAPE: ReadonlySet<string> = new Set(["cx", "cy", "r", "rx", "ry", "x", "y", "width", "height", "d"]);

/** A drawing pin, stuck in. */
const PinSign = ({ x, y, size }: { readonly x: number; readonly y: number; readonly size: number }) => (
  <g transform={`translate(${x} ${y}) scale(${size / 2})`}>
    <path className={styles.needle} d="M0 0V1.7" />
    <path className={styles.pin} d="M-.75-1.3H.75L.5-.4L1 .3H-1L-.5-.4Z" />
  </g>
);
