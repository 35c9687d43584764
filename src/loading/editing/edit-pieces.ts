import { BadInput } from "../../measures/bad-input.ts";
import type { LoadPlan, Placement } from "../load-plan.ts";
import type { LoadRequest } from "../load-request.ts";
import {
  closePlan,
  type Edited,
  type OpenLevel,
  type OpenPiece,
  openPlan,
  type PiecePlace,
  waitingCounts,
} from "./open-plan.ts";

/** Where a piece is to stand: its axis in millimetres from the chamber's, its turn in degrees. */
export interface Spot {
  readonly xMm: number;
  readonly yMm: number;
  readonly turnDeg: number;
}

/** A turn between 0 and 360. */
export const wholeTurn = (deg: number): number => ((deg % 360) + 360) % 360;

/**
 * Sets a piece down elsewhere on its level. Nothing is refused for breaking a rule: she may set it where she likes, and the
 * checker says what is wrong there.
 *
 * @throws BadInput where the plan has no such piece
 */
export function movePiece(request: LoadRequest, plan: LoadPlan, place: PiecePlace, spot: Spot): Edited {
  return changed(request, plan, (levels) => {
    const piece = pieceAt(levels, place);
    piece.placement = standing(piece.placement.ware, spot);
  });
}

/** Turns a piece by so many degrees, counter-clockwise seen from above. */
export function turnPiece(request: LoadRequest, plan: LoadPlan, place: PiecePlace, byDeg: number): Edited {
  return changed(request, plan, (levels) => {
    const piece = pieceAt(levels, place);
    piece.placement = { ...piece.placement, turnDeg: wholeTurn(piece.placement.turnDeg + byDeg) };
  });
}

/** Carries a piece to another level and sets it down there; it becomes the last of that level. */
export function moveToLevel(
  request: LoadRequest,
  plan: LoadPlan,
  place: PiecePlace,
  level: number,
  spot: Spot,
): Edited {
  return changed(request, plan, (levels) => {
    const piece = pieceAt(levels, place);
    const to = levelAt(levels, level);
    piece.placement = standing(piece.placement.ware, spot);
    if (level === place.level) return;
    levelAt(levels, place.level).pieces.splice(place.placement, 1);
    to.pieces.push(piece);
  });
}

/** Lets two pieces change places, on one level or two; each keeps its own turn. */
export function swapPieces(request: LoadRequest, plan: LoadPlan, one: PiecePlace, other: PiecePlace): Edited {
  return changed(request, plan, (levels) => {
    const [a, b] = [pieceAt(levels, one), pieceAt(levels, other)];
    const [atA, atB] = [a.placement, b.placement];
    a.placement = { ...atA, xMm: atB.xMm, yMm: atB.yMm };
    b.placement = { ...atB, xMm: atA.xMm, yMm: atA.yMm };
    levelAt(levels, one.level).pieces[one.placement] = b;
    levelAt(levels, other.level).pieces[other.placement] = a;
  });
}

/** Takes a piece out of the load; it waits again. */
export function takeOut(request: LoadRequest, plan: LoadPlan, place: PiecePlace): Edited {
  return changed(request, plan, (levels) => {
    pieceAt(levels, place);
    levelAt(levels, place.level).pieces.splice(place.placement, 1);
  });
}

/**
 * Puts a waiting piece in; it becomes the last of its level.
 *
 * @throws BadInput where none of that kind waits
 */
export function putIn(request: LoadRequest, plan: LoadPlan, ware: string, level: number, spot: Spot): Edited {
  const waiting = waitingCounts(request, plan).get(ware);
  if (waiting === undefined || waiting <= 0) {
    const found = waiting === undefined ? "a piece the load does not know" : "none left of it";
    throw new BadInput({ code: "none-waits", path: ware, found, expected: "a piece that waits" });
  }
  return changed(request, plan, (levels) => {
    levelAt(levels, level).pieces.push({ placement: standing(ware, spot), from: null });
  });
}

const standing = (ware: string, { xMm, yMm, turnDeg }: Spot): Placement => ({
  ware,
  xMm,
  yMm,
  turnDeg: wholeTurn(turnDeg),
});

function changed(request: LoadRequest, plan: LoadPlan, change: (levels: OpenLevel[]) => void): Edited {
  const levels = openPlan(plan);
  change(levels);
  return closePlan(request, plan, levels);
}

/** @throws BadInput where there is no such level */
export function levelAt(levels: readonly OpenLevel[], level: number): OpenLevel {
  const found = levels[level];
  if (found) return found;
  throw new BadInput({
    code: "unknown-place",
    path: `levels[${level}]`,
    found: "no such level",
    expected: `one of the plan's ${levels.length}`,
  });
}

function pieceAt(levels: readonly OpenLevel[], { level, placement }: PiecePlace): OpenPiece {
  const found = levelAt(levels, level).pieces[placement];
  if (found) return found;
  throw new BadInput({
    code: "unknown-place",
    path: `levels[${level}].placements[${placement}]`,
    found: "no such piece",
    expected: "a piece of the plan",
  });
}
