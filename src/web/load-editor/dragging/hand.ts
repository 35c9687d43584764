import type { Spot } from "../../../loading/editing/edit-pieces.ts";
import { wholeTurn } from "../../../loading/editing/edit-pieces.ts";
import { findRoom } from "../../../loading/editing/find-room.ts";
import { type HeldPiece, holdPiece, type LiveAnswer } from "../../../loading/editing/live-answer.ts";
import type { LoadPlan } from "../../../loading/load-plan.ts";
import type { LoadRequest } from "../../../loading/load-request.ts";
import type { Place } from "../../../studio/loads/places.ts";
import type { Ware } from "../../../ware/ware.ts";

/** What is in the hand: a piece of the plan, or one of a kind that waits. */
export type Piece = Place | { readonly ware: string };

export const isPlaced = (piece: Piece): piece is Place => "placement" in piece;

/** Where the piece in the hand is now, and what the rules say to it. */
export interface HandState extends LiveAnswer {
  readonly spot: Spot;
  readonly level: number;
  /** It was drawn a little to where it may stand. */
  readonly isSnapped: boolean;
}

/** A piece taken up. */
export interface Hand {
  readonly piece: Piece;
  readonly ware: Ware;
  readonly held: HeldPiece;
  /** Where it stood; null for one that waits. */
  readonly from: Spot | null;
  readonly fromLevel: number;
  /** The piece held at a spot over a level, drawn to where it may stand if that is a step away. */
  readonly at: (wish: Spot, level: number, snaps?: boolean) => HandState;
}

/** So near a place where it may stand a piece goes there by itself. */
const SNAP_MM = 3;

/**
 * Takes a piece up.
 *
 * @returns null where there is no such piece
 */
export function takeUp(request: LoadRequest, plan: LoadPlan, piece: Piece, level: number): Hand | null {
  const placement = isPlaced(piece) ? plan.levels[piece.level]?.placements[piece.placement] : undefined;
  const name = isPlaced(piece) ? placement?.ware : piece.ware;
  const ware = request.ware.find((each) => each.name === name);
  const held = holdPiece(request, plan, piece);
  if (!ware || !held) return null;
  return {
    piece,
    ware,
    held,
    from: placement ? { xMm: placement.xMm, yMm: placement.yMm, turnDeg: placement.turnDeg } : null,
    fromLevel: isPlaced(piece) ? piece.level : level,
    at: (wished, on, snaps = true) => {
      // What is asked about is what will be kept.
      const wish = keptSpot(wished);
      const spot = snaps ? (findRoom(held, on, wish, SNAP_MM) ?? wish) : wish;
      return { ...held.answer(spot, on), spot, level: on, isSnapped: spot !== wish };
    },
  };
}

/** A spot as it is kept: to a tenth of a millimetre and of a degree, which no hand sets a pot to. */
export const keptSpot = ({ xMm, yMm, turnDeg }: Spot): Spot => ({
  xMm: tenth(xMm),
  yMm: tenth(yMm),
  turnDeg: tenth(wholeTurn(turnDeg)),
});

const tenth = (value: number): number => Math.round(value * 10) / 10 + 0;
