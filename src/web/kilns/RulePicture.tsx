import type { ReactNode } from "react";
import type { ClearanceRules } from "../../loading/clearance-rules.ts";
import styles from "./RulePicture.module.css";

/** A small drawing of what a clearance is measured between: the distance in red, on a field of 76 by 76. */
export const RulePicture = ({ rule }: { readonly rule: keyof ClearanceRules }) => (
  <svg viewBox="0 0 76 76" aria-hidden="true">
    {PICTURES[rule]}
  </svg>
);

const Pot = ({ x, y = 64, wide = 22, high = 30 }: { x: number; y?: number; wide?: number; high?: number }) => (
  <path
    className={styles.pot}
    d={`M ${x - wide / 2} ${y - high} H ${x + wide / 2} L ${x + wide * 0.36} ${y} H ${x - wide * 0.36} Z`}
  />
);
const Shelf = ({ y, from = 4, to = 72 }: { y: number; from?: number; to?: number }) => (
  <rect className={styles.shelf} x={from} y={y} width={to - from} height={6} />
);
const Wall = ({ x }: { x: number }) => <rect className={styles.wall} x={x} y={2} width={10} height={72} />;
const Across = ({ x1, x2, y }: { x1: number; x2: number; y: number }) => (
  <path className={styles.gap} d={`M ${x1} ${y - 5} v 10 M ${x2} ${y - 5} v 10 M ${x1} ${y} H ${x2}`} />
);
const Up = ({ x, y1, y2 }: { x: number; y1: number; y2: number }) => (
  <path className={styles.gap} d={`M ${x - 5} ${y1} h 10 M ${x - 5} ${y2} h 10 M ${x} ${y1} V ${y2}`} />
);

const PICTURES: Readonly<Record<keyof ClearanceRules, ReactNode>> = {
  gapMm: (
    <>
      <Shelf y={64} />
      <Pot x={18} wide={24} />
      <Pot x={58} wide={24} high={38} />
      <Across x1={30} x2={46} y={38} />
    </>
  ),
  headroomMm: (
    <>
      <Shelf y={8} />
      <Shelf y={64} />
      <Pot x={38} wide={30} high={34} />
      <Up x={38} y1={14} y2={30} />
    </>
  ),
  lidMm: (
    <>
      <rect className={styles.wall} x={2} y={2} width={72} height={12} />
      <Shelf y={64} />
      <Pot x={38} wide={30} high={30} />
      <Up x={38} y1={14} y2={34} />
    </>
  ),
  floorAirMm: (
    <>
      <rect className={styles.wall} x={2} y={62} width={72} height={12} />
      <Shelf y={34} />
      <Pot x={38} y={34} wide={24} high={24} />
      <Up x={38} y1={40} y2={62} />
    </>
  ),
  shelfWallMm: (
    <>
      <Wall x={2} />
      <Shelf y={46} from={28} />
      <Pot x={52} y={46} wide={22} high={28} />
      <Across x1={12} x2={28} y={49} />
    </>
  ),
  probeMm: (
    <>
      <Wall x={2} />
      <line className={styles.probe} x1={4} x2={28} y1={38} y2={38} />
      <Shelf y={64} from={20} />
      <Pot x={60} wide={20} high={40} />
      <Across x1={30} x2={50} y={38} />
    </>
  ),
  spyholeMm: (
    <>
      <Wall x={2} />
      <rect className={styles.hole} x={1} y={30} width={12} height={14} />
      <Shelf y={64} from={20} />
      <Pot x={56} wide={22} high={40} />
      <Across x1={13} x2={45} y={37} />
    </>
  ),
  postAlignMm: (
    <>
      <Shelf y={36} />
      <rect className={styles.pot} x={26} y={42} width={16} height={32} />
      <rect className={styles.pot} x={36} y={4} width={16} height={32} />
      <path className={styles.gap} d="M 34 46 V 28 M 44 46 V 28 M 34 39 H 44" />
    </>
  ),
};
