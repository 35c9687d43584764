import { useEffect, useMemo, useRef, useState } from "react";
import type { Spot } from "../../../loading/editing/edit-pieces.ts";
import type { Place } from "../../../studio/loads/places.ts";
import { type Watched, watched } from "../../studio/watched.ts";
import { carryTo, putInAt, setDown, swap, takeOutOf } from "../piece-edits.ts";
import type { Editor } from "../use-editor.ts";
import { type Hand, type HandState, isPlaced, type Piece, takeUp } from "./hand.ts";

/** Where the pointer is over, beside the level that is drawn large. */
export type Over = { readonly level: number } | "tray" | "nothing" | null;

/** What is in her hand, and what can be done with it. */
export interface InHand {
  readonly hand: Hand | null;
  /** By pointer the piece follows it; by keys it goes step by step. */
  readonly by: "pointer" | "keys";
  readonly live: Watched<HandState | null>;
  readonly over: Over;
  readonly take: (piece: Piece, by: "pointer" | "keys", at?: Spot) => boolean;
  readonly move: (spot: Spot, snaps?: boolean) => void;
  /** Turns what is in her hand, or the chosen piece: several presses in a row are one change. */
  readonly turn: (piece: Place, byDeg: number) => void;
  readonly setOver: (over: Over) => void;
  /** Sets it down where it is. */
  readonly drop: () => void;
  /** Sets it down in another's place, and that one in its. */
  readonly dropOnto: (other: Piece) => void;
  /** Puts it back where it was. */
  readonly letGo: () => void;
}

/** After so long without another press the piece is set down as it is turned. */
const QUIET_MS = 600;

/** The one piece she has in her hand, if any. */
export function useHand(editor: Editor): InHand {
  const live = useMemo(() => watched<HandState | null>(null), []);
  const [state, setState] = useState<{ hand: Hand; by: "pointer" | "keys" } | null>(null);
  const [over, setOver] = useState<Over>(null);
  // Between two pointer moves React may not have drawn yet: what is asked in a handler is asked of these.
  const now = useRef<{ hand: Hand | null; over: Over; editor: Editor }>({ hand: null, over: null, editor });
  now.current.editor = editor;

  const quiet = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);

  const empty = (): void => {
    clearTimeout(quiet.current);
    quiet.current = undefined;
    now.current.hand = null;
    now.current.over = null;
    setState(null);
    setOver(null);
    live.set(null);
  };
  // The load became another under her hand: what she held may be gone.
  const { plan } = editor;
  const heldOf = useRef(plan);
  useEffect(() => {
    if (heldOf.current !== plan && now.current.hand) {
      now.current.hand = null;
      setState(null);
      setOver(null);
      live.set(null);
    }
    heldOf.current = plan;
  }, [plan, live]);

  useEffect(() => () => clearTimeout(quiet.current), []);

  const take = (piece: Piece, by: "pointer" | "keys", at?: Spot): boolean => {
    const { request, plan: from, level, isFixed } = now.current.editor;
    const hand = isFixed ? null : takeUp(request, from, piece, level);
    if (!hand) return false;
    clearTimeout(quiet.current);
    quiet.current = undefined;
    now.current.hand = hand;
    setState({ hand, by });
    const spot = at ?? hand.from;
    if (spot) live.set(hand.at(spot, level, false));
    return true;
  };
  const move = (spot: Spot, snaps?: boolean): void => {
    const { hand } = now.current;
    if (hand) live.set(hand.at(spot, now.current.editor.level, snaps));
  };
  const drop = (): void => {
    const { hand, over: above, editor: on } = now.current;
    const at = live.get();
    empty();
    if (hand) setHandDown(on, hand, above, at);
  };

  return {
    hand: state?.hand ?? null,
    by: state?.by ?? "pointer",
    live,
    over,
    take,
    move: (spot, snaps) => {
      // Moved as well as turned: she sets it down herself.
      clearTimeout(quiet.current);
      quiet.current = undefined;
      move(spot, snaps);
    },
    turn: (piece, byDeg) => {
      const isHeld = now.current.hand !== null;
      if (!isHeld && !take(piece, "keys")) return;
      const spot = live.get()?.spot;
      if (spot) move({ ...spot, turnDeg: spot.turnDeg + byDeg }, false);
      if (isHeld && quiet.current === undefined) return;
      clearTimeout(quiet.current);
      quiet.current = setTimeout(drop, QUIET_MS);
    },
    setOver: (to) => {
      if (sameOver(now.current.over, to)) return;
      now.current.over = to;
      setOver(to);
    },
    drop,
    dropOnto: (other) => {
      const { hand, editor: on } = now.current;
      empty();
      if (hand && isPlaced(hand.piece) && isPlaced(other)) swap(on, hand.piece, other);
    },
    letGo: empty,
  };
}

function setHandDown(editor: Editor, { piece, from }: Hand, over: Over, at: HandState | null): void {
  if (over === "nothing") return;
  if (over === "tray") {
    if (isPlaced(piece)) takeOutOf(editor, piece);
    return;
  }
  if (over !== null) {
    if (isPlaced(piece)) carryTo(editor, piece, over.level, from ?? undefined);
    else putInAt(editor, piece.ware, over.level);
    return;
  }
  if (at === null) return;
  if (isPlaced(piece)) setDown(editor, piece, at.spot);
  else putInAt(editor, piece.ware, at.level, at.spot, true);
}

const sameOver = (a: Over, b: Over): boolean =>
  a === b || (typeof a === "object" && typeof b === "object" && a !== null && b !== null && a.level === b.level);
