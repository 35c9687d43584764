import type { PostInPlace } from "../loading/checker/posts-in-place.ts";
import { type PieceInPlace, type Scene, type ShelfInPlace, sceneOf } from "../loading/checker/scene.ts";
import type { LoadPlan } from "../loading/load-plan.ts";
import type { LoadRequest } from "../loading/load-request.ts";
import { edgeMarginMm } from "../loading/rules/shelf-edge.ts";
import { degrees } from "../measures/angle.ts";
import { clockText } from "./clock-direction.ts";

/** A piece as the sheet speaks of it. */
export interface NumberedPiece {
  /** From 1 on each level, in the order in which the pieces are set down. */
  readonly number: number;
  readonly piece: PieceInPlace;
  readonly turnDeg: number;
  /** From the piece's nearest edge to the shelf's edge; below zero where it overhangs. */
  readonly insideMm: number;
  /** `4 o'clock`, or `the middle`. */
  readonly direction: string;
  /** Where its handle points, where it has one. */
  readonly handle: string | null;
  readonly spout: string | null;
}

/** A level as the sheet speaks of it. */
export interface SheetLevel {
  readonly index: number;
  /** From 1, as people count. */
  readonly number: number;
  readonly shelf: ShelfInPlace;
  readonly pieces: readonly NumberedPiece[];
  readonly postsUnder: readonly PostInPlace[];
  /** Posts that stand on this shelf, for shelves above. */
  readonly postsOn: readonly PostInPlace[];
  /** The face of this shelf to the underside of the next above, or to the lid. */
  readonly clearMm: number;
  /** Nothing but the lid above. */
  readonly underLid: boolean;
}

/** Everything the pages draw, worked out once. */
export interface SheetLoad {
  readonly request: LoadRequest;
  readonly plan: LoadPlan;
  readonly scene: Scene;
  readonly levels: readonly SheetLevel[];
  readonly pieces: number;
  readonly waiting: number;
}

// Nearer the chamber's axis than this a direction says nothing.
const MIDDLE_MM = 12;

/**
 * Numbers the pieces and gathers what stands on and under each shelf.
 *
 * @throws BadInput where the plan names a shelf or a piece the request has not
 */
export function sheetLoad(request: LoadRequest, plan: LoadPlan): SheetLoad {
  const scene = sceneOf(request, plan);
  const levels = scene.shelves.map((shelf, index): SheetLevel => {
    const above = scene.shelves.filter((other) => other.undersideMm >= shelf.topMm);
    const roof = Math.min(request.kiln.chamber.depthMm, ...above.map((other) => other.undersideMm));
    return {
      index,
      number: index + 1,
      shelf,
      pieces: inCarryingOrder(scene.pieces.filter((piece) => piece.level === index)).map((piece, i) =>
        numberedPiece(scene, piece, i + 1),
      ),
      postsUnder: scene.posts.filter((post) => post.level === index),
      postsOn: scene.posts.filter((post) => post.standsOn === index),
      clearMm: roof - shelf.topMm,
      underLid: above.length === 0,
    };
  });
  return {
    request,
    plan,
    scene,
    levels,
    pieces: scene.pieces.length,
    waiting: request.ware.reduce((sum, ware) => sum + ware.count, 0),
  };
}

/** Whether something in the wall at a height opens into the space above this shelf. */
export const looksIn = (level: SheetLevel, heightMm: number): boolean =>
  heightMm >= level.shelf.topMm && heightMm <= level.shelf.topMm + level.clearMm;

/** Posts that stand on the floor. */
export const postsOnFloor = (load: SheetLoad): PostInPlace[] =>
  load.scene.posts.filter((post) => post.standsOn === null);

/**
 * The order in which hands never reach over glazed ware already set: rows from the far side (+y) toward the potter,
 * each row from left to right, so that the numbers read like lines of text. Common practice, no source.
 */
function inCarryingOrder(pieces: readonly PieceInPlace[]): PieceInPlace[] {
  const waiting = [...pieces].sort((a, b) => b.y - a.y || a.x - b.x);
  const order: PieceInPlace[] = [];
  while (waiting.length > 0) {
    const farthest = waiting[0] as PieceInPlace;
    const rowEnd = farthest.y - farthest.ware.diameterMm / 2;
    const first = waiting.findIndex((piece) => piece.y < rowEnd);
    const row = waiting.splice(0, first < 0 ? waiting.length : first);
    order.push(...row.sort((a, b) => a.x - b.x || b.y - a.y));
  }
  return order;
}

function numberedPiece(scene: Scene, piece: PieceInPlace, number: number): NumberedPiece {
  const placement = scene.plan.levels[piece.level]?.placements[piece.placement];
  const turnDeg = placement?.turnDeg ?? 0;
  const { handle, spout } = piece.ware;
  return {
    number,
    piece,
    turnDeg,
    insideMm: edgeMarginMm(scene, piece),
    direction:
      Math.hypot(piece.x, piece.y) < MIDDLE_MM ? "the middle" : clockText(degrees(Math.atan2(piece.y, piece.x))),
    handle: handle && clockText(handle.angleDeg + turnDeg),
    spout: spout && clockText(spout.angleDeg + turnDeg),
  };
}
