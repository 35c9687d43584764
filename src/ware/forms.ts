import { OneOf } from "../measures/schema.ts";

/** The forms a potter throws or builds. Each is a starting shape; her own sizes and profile always win. */
export const FORM_NAMES = [
  "beaker",
  "mug",
  "bowl",
  "plate",
  "vase",
  "bottle",
  "jar",
  "lid",
  "jug",
  "teapot",
  "box",
  "tile",
  "other",
] as const;
export type FormName = (typeof FORM_NAMES)[number];

export const FormSchema = OneOf(FORM_NAMES, "What kind of thing it is; used for drawing and for her lists.");

interface Protruding {
  readonly reachMm: number;
  readonly widthMm: number;
  readonly angleDeg: number;
}

/** A piece's size as she measures it. Millimetres. */
export interface FormSize {
  /** Across its widest place; for a box or tile, along its longer side. */
  readonly diameterMm: number;
  readonly heightMm: number;
  /** A box's or tile's shorter side; the longer one where left out. */
  readonly widthMm?: number;
}

/** What a form makes of a size: the outline the planner works with. */
export interface FormOutline {
  readonly diameterMm: number;
  readonly heightMm: number;
  readonly handle: Protruding | null;
  readonly spout: Protruding | null;
  readonly profile: [number, number][] | null;
}

// Each form's side as [share of the height, share of the half diameter], foot to rim. Ours, drawn by eye: a start for
// the potter to correct. Where she gives no profile of her own the planner keeps clear of the widest place all the way up.
const SIDES: Readonly<Partial<Record<FormName, readonly (readonly [number, number])[]>>> = {
  bowl: [
    [0, 0.42],
    [0.08, 0.42],
    [0.3, 0.74],
    [0.65, 0.93],
    [1, 1],
  ],
  plate: [
    [0, 0.58],
    [0.25, 0.6],
    [0.6, 0.84],
    [1, 1],
  ],
  vase: [
    [0, 0.6],
    [0.3, 0.95],
    [0.45, 1],
    [0.7, 0.82],
    [0.85, 0.5],
    [1, 0.56],
  ],
  bottle: [
    [0, 0.75],
    [0.35, 1],
    [0.6, 0.9],
    [0.72, 0.4],
    [1, 0.36],
  ],
  jar: [
    [0, 0.7],
    [0.35, 1],
    [0.7, 0.98],
    [0.9, 0.72],
    [1, 0.72],
  ],
  lid: [
    [0, 1],
    [0.25, 1],
    [0.55, 0.55],
    [0.6, 0.2],
    [1, 0.24],
  ],
  jug: [
    [0, 0.72],
    [0.35, 1],
    [0.7, 0.8],
    [0.85, 0.7],
    [1, 0.8],
  ],
  teapot: [
    [0, 0.65],
    [0.4, 1],
    [0.7, 0.85],
    [0.8, 0.45],
    [1, 0.2],
  ],
};

/** A pulled handle stands out by about a third of the pot's width, never past 45 mm. Common practice, no source. */
const handleFor = (size: FormSize): Protruding => ({
  reachMm: Math.round(Math.min(45, Math.max(20, size.diameterMm * 0.34))),
  widthMm: Math.round(Math.min(24, Math.max(12, size.diameterMm * 0.2))),
  angleDeg: 0,
});

const spoutFor = (size: FormSize, share: number): Protruding => ({
  reachMm: Math.round(size.diameterMm * share),
  widthMm: Math.round(Math.max(16, size.diameterMm * 0.26)),
  angleDeg: 180,
});

/**
 * The outline a form takes at a size: a starting point she can change. A box or tile, which is not round, is given the
 * circle about its corners, so that it can be turned any way.
 *
 * @param form which form
 * @param size its measured size in millimetres, above zero
 */
export function formOutline(form: FormName, size: FormSize): FormOutline {
  const cornered = form === "box" || form === "tile";
  const diameterMm = cornered ? Math.hypot(size.diameterMm, size.widthMm ?? size.diameterMm) : size.diameterMm;
  const half = diameterMm / 2;
  const side = SIDES[form];
  const handled = form === "mug" || form === "jug" || form === "teapot";
  const spouted = form === "jug" ? 0.1 : form === "teapot" ? 0.36 : null;
  return {
    diameterMm: Math.round(diameterMm * 100) / 100,
    heightMm: size.heightMm,
    handle: handled ? handleFor(size) : null,
    spout: spouted === null ? null : spoutFor(size, spouted),
    profile: side
      ? side.map(([up, out]) => [up * size.heightMm, Math.min(half, Math.round(out * half * 100) / 100)])
      : null,
  };
}
