import type { ReactNode } from "react";
import { chamberRegion } from "../../kiln/convex-region.ts";
import { regionPath } from "./drawing/region-path.ts";
import styles from "./MeasuringGuide.module.css";

const OCTAGON = regionPath(chamberRegion({ shape: "polygon", sides: 8, acrossFlatsMm: 80, depthMm: 1 }));
const ARROW_LEFT = "M -40 0 l 7 -4 v 8 z";
const ARROW_RIGHT = "M 40 0 l -7 -4 v 8 z";

/** How to take a kiln's measures: short words and a drawing each. */
export function MeasuringGuide() {
  return (
    <div className={styles.guide}>
      <p className={styles.first}>
        The kiln cold, and switched off at its isolator, before you reach in. A rule, a straight stick and a pencil are
        enough.
      </p>
      <Measure title="Which way is which" picture={<ClockPicture />}>
        Stand where you stand to load. You are at 6 o’clock; the far side is 12, your right hand 3.
      </Measure>
      <Measure title="Across" picture={<AcrossPicture />}>
        From the middle of one flat wall straight over to the flat opposite, brick to brick. A round kiln: the widest
        place. Measure twice, a quarter turn apart, and take the smaller.
      </Measure>
      <Measure title="Depth" picture={<DepthPicture />}>
        Lay the stick across the rim where the lid comes down. From its underside to the floor.
      </Measure>
      <Measure title="Probe" picture={<ProbePicture />}>
        Height: floor to the middle of the probe. Reach: from the wall’s face to the tip. Do not pull or bend it.
      </Measure>
      <Measure title="Spyhole" picture={<SpyholePicture />}>
        Height: floor to the middle of the hole on the inside. Across: its inner end, which may be wider or narrower
        than outside.
      </Measure>
    </div>
  );
}

function Measure({ title, picture, children }: { title: string; picture: ReactNode; children: ReactNode }) {
  return (
    <section className={styles.measure}>
      <svg className={styles.picture} viewBox="-56 -56 112 112" aria-hidden="true">
        {picture}
      </svg>
      <div>
        <h3>{title}</h3>
        <p>{children}</p>
      </div>
    </section>
  );
}

const ClockPicture = () => (
  <>
    <path className={styles.wall} d={OCTAGON} />
    {[
      ["12", 0, -27],
      ["3", 29, 0],
      ["6", 0, 28],
      ["9", -29, 0],
    ].map(([hour, x, y]) => (
      <text key={hour} x={x} y={y} textAnchor="middle" dominantBaseline="central">
        {hour}
      </text>
    ))}
    <path className={styles.strong} d="M -9 54 a 9 8 0 0 1 18 0 Z" />
  </>
);

const AcrossPicture = () => (
  <>
    <path className={styles.wall} d={OCTAGON} />
    <line className={styles.rule} x1={-36} x2={36} y1={0} y2={0} />
    <path className={styles.strong} d={`${ARROW_LEFT} ${ARROW_RIGHT}`} />
  </>
);

/** Walls and floor, cut through. */
const Cut = () => <path className={styles.wall} d="M -40 -36 V 40 H 40 V -36" />;

const DepthPicture = () => (
  <>
    <Cut />
    <rect className={styles.stick} x={-48} y={-42} width={96} height={6} />
    <line className={styles.rule} x1={0} x2={0} y1={-30} y2={34} />
    <path className={styles.strong} d="M 0 -36 l -4 7 h 8 z M 0 40 l -4 -7 h 8 z" />
  </>
);

const ProbePicture = () => (
  <>
    <Cut />
    <line className={styles.probe} x1={52} x2={12} y1={-6} y2={-6} />
    <line className={styles.rule} x1={18} x2={34} y1={-22} y2={-22} />
    <path className={styles.strong} d="M 12 -22 l 7 -4 v 8 z M 40 -22 l -7 -4 v 8 z" />
    <line className={styles.rule} x1={24} x2={24} y1={2} y2={34} />
    <path className={styles.strong} d="M 24 -4 l -4 7 h 8 z M 24 40 l -4 -7 h 8 z" />
  </>
);

const SpyholePicture = () => (
  <>
    <Cut />
    <circle className={styles.hole} cx={0} cy={-6} r={9} />
    <line className={styles.rule} x1={0} x2={0} y1={0} y2={34} />
    <path className={styles.strong} d="M 0 -6 l -4 7 h 8 z M 0 40 l -4 -7 h 8 z" />
  </>
);
