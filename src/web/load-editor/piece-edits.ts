import { movePiece, moveToLevel, putIn, type Spot, swapPieces, takeOut } from "../../loading/editing/edit-pieces.ts";
import { findRoom } from "../../loading/editing/find-room.ts";
import { holdPiece } from "../../loading/editing/live-answer.ts";
import { type Place, placeKey, placementAt } from "../../studio/loads/places.ts";
import { tell } from "../parts/index.ts";
import { keptSpot } from "./dragging/hand.ts";
import { type Editor, isSame } from "./use-editor.ts";

// What she can do with single pieces. Each is one edit with a note in words; where there is no room it says so.

/** Sets a piece down elsewhere on its level, or turned. */
export function setDown(editor: Editor, place: Place, spot: Spot): void {
  const { request, plan, edit } = editor;
  const was = placementAt(plan as never, place);
  if (!was || editor.isFixed) return;
  const to = keptSpot(spot);
  const moved = to.xMm !== was.xMm || to.yMm !== was.yMm;
  if (!moved && to.turnDeg === was.turnDeg) return;
  edit(movePiece(request, plan, place, to), `${moved ? "moved" : "turned"} the ${was.ware}`);
}

/** Moves a piece to the nearest place where it breaks no rule. */
export function setClear(editor: Editor, place: Place): void {
  const { request, plan } = editor;
  const was = placementAt(plan as never, place);
  const held = holdPiece(request, plan, place);
  if (!was || !held || editor.isFixed) return;
  const spot = findRoom(held, place.level, was);
  if (spot) editor.edit(movePiece(request, plan, place, spot), `set the ${was.ware} clear`);
  else tell(`There is no place for the ${was.ware} on this level that keeps every rule.`);
}

/**
 * Carries a piece to another level, to the room nearest to a spot.
 *
 * @param wish where over that level; left out, above or below where it stands
 */
export function carryTo(editor: Editor, place: Place, level: number, wish?: Spot): void {
  const { request, plan } = editor;
  const was = placementAt(plan as never, place);
  const held = holdPiece(request, plan, place);
  if (!was || !held || editor.isFixed || plan.levels[level] === undefined || level === place.level) return;
  const carry = (spot: Spot): void =>
    editor.edit(moveToLevel(request, plan, place, level, spot), `moved the ${was.ware} to level ${level + 1}`);
  const spot = findRoom(held, level, wish ?? was);
  if (spot) carry(spot);
  else
    tell(
      `There is no room for the ${was.ware} on level ${level + 1}.`,
      () => carry(wish ?? was),
      "Set it there anyway",
    );
}

/**
 * Puts a waiting piece in, where there is room nearest to a spot.
 *
 * @param isExact true where she set it there herself: then it stands there whatever the rules say
 */
export function putInAt(editor: Editor, ware: string, level: number, wish?: Spot, isExact = false): void {
  const { request, plan } = editor;
  const held = holdPiece(request, plan, { ware });
  const shelf = plan.levels[level];
  if (!held || !shelf || editor.isFixed) return;
  const middle = { xMm: shelf.xMm, yMm: shelf.yMm, turnDeg: 0 };
  const put = (spot: Spot): void => {
    const edited = putIn(request, plan, ware, level, spot);
    const placement = (edited.plan.levels[level]?.placements.length ?? 1) - 1;
    editor.edit(edited, `put the ${ware} in on level ${level + 1}`, { level, chosen: { level, placement } });
  };
  const spot = isExact && wish ? wish : findRoom(held, level, wish ?? middle);
  if (spot) put(spot);
  else
    tell(`There is no room for the ${ware} on level ${level + 1}.`, () => put(wish ?? middle), "Set it there anyway");
}

/** Takes a piece out of the load; it waits again. */
export function takeOutOf(editor: Editor, place: Place): void {
  const was = placementAt(editor.plan as never, place);
  if (!was || editor.isFixed) return;
  editor.edit(takeOut(editor.request, editor.plan, place), `took out the ${was.ware}`, { level: place.level });
}

/** Lets two pieces change places. */
export function swap(editor: Editor, one: Place, other: Place): void {
  const [a, b] = [placementAt(editor.plan as never, one), placementAt(editor.plan as never, other)];
  if (!a || !b || editor.isFixed || isSame(one, other)) return;
  const edited = swapPieces(editor.request, editor.plan, one, other);
  editor.edit(edited, `let the ${a.ware} and the ${b.ware} change places`);
}

/** Pins a piece where it stands, or takes its pin out. */
export function pinOrUnpin(editor: Editor, place: Place): void {
  const was = placementAt(editor.plan as never, place);
  if (!was || editor.isFixed) return;
  const isPinned = editor.pins.has(placeKey(place));
  const others = editor.load.pins.filter((pin) => !isSame(pin, place));
  editor.setPins(isPinned ? others : [...others, place], `${isPinned ? "unpinned" : "pinned"} the ${was.ware}`);
}
