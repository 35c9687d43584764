import { radians } from "../measures/angle.ts";
import type { Protrusion, Ware } from "./ware.ts";

/** A handle or spout as a solid: an upright stadium from the axis along `angle`, from `bottomMm` to `topMm`. */
export interface StadiumPart {
  /** Radians on the unturned piece. */
  readonly angle: number;
  /** From the axis to the middle of the rounded far end. */
  readonly lengthMm: number;
  /** Half the stadium's width. */
  readonly radiusMm: number;
  readonly bottomMm: number;
  readonly topMm: number;
}

/**
 * A piece in space, about its own axis, heights above the shelf face it stands on.
 * `rings` is its body as a solid of revolution: straight between neighbouring [height, radius] pairs, foot upward.
 */
export interface PieceSolid {
  readonly heightMm: number;
  readonly rings: readonly (readonly [number, number])[];
  readonly cookie: { readonly radiusMm: number; readonly topMm: number } | null;
  readonly stadiums: readonly StadiumPart[];
}

/** The solid a piece of this kind fills, cookie included (the cookie lifts the rest). Millimetres. */
export function pieceSolid(ware: Ware): PieceSolid {
  const lift = ware.cookie?.thicknessMm ?? 0;
  const half = ware.diameterMm / 2;
  const profile = ware.profile ?? [
    [0, half],
    [ware.heightMm, half],
  ];
  const stadium = (part: Protrusion): StadiumPart => {
    const radiusMm = part.widthMm / 2;
    return {
      angle: radians(part.angleDeg),
      lengthMm: Math.max(0, half + part.reachMm - radiusMm),
      radiusMm,
      bottomMm: lift,
      topMm: lift + ware.heightMm,
    };
  };
  return {
    heightMm: lift + ware.heightMm,
    rings: profile.map(([height, radius]) => [lift + height, radius] as const),
    cookie: ware.cookie && { radiusMm: ware.cookie.diameterMm / 2, topMm: lift },
    stadiums: [ware.handle, ware.spout].filter((part) => part !== null).map(stadium),
  };
}
