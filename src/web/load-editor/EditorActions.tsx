import { placeKey } from "../../studio/loads/places.ts";
import { type Action, useAction } from "../actions/registry.ts";
import { type Direction, nextByArrow } from "./choosing/in-direction.ts";
import type { InHand } from "./dragging/use-hand.ts";
import { carryTo, pinOrUnpin, setClear, takeOutOf } from "./piece-edits.ts";
import type { Editor } from "./use-editor.ts";
import { isSame } from "./use-editor.ts";

interface EditorActionsProps {
  readonly editor: Editor;
  readonly inHand: InHand;
  readonly isSwapping: boolean;
  readonly setSwapping: (on: boolean) => void;
}

const NUDGE_MM = 5;
const SMALL_NUDGE_MM = 1;
const STEP_DEG = 15;
const SMALL_STEP_DEG = 1;

const DIRECTIONS: readonly (readonly [Direction, string, number, number])[] = [
  ["left", "left", -1, 0],
  ["right", "right", 1, 0],
  ["up", "away", 0, 1],
  ["down", "toward me", 0, -1],
];

/** The focus is on a piece in the drawing. */
const inDrawing = (): boolean => document.activeElement?.closest("[data-editor-drawing]") !== null;

/** Everything that can be done with pieces, for keys, the palette and the keyboard help. */
export function EditorActions({ editor, inHand, isSwapping, setSwapping }: EditorActionsProps) {
  const { chosen, here, level, plan, isFixed } = editor;
  const canChange = chosen !== null && !isFixed;
  const { hand } = inHand;
  const on = (run: (place: NonNullable<typeof chosen>) => void) => () => {
    if (chosen) run(chosen);
  };

  const go = (direction: Direction): void => {
    const pieces = here?.pieces.map(({ piece }) => piece) ?? [];
    const from = pieces.find((piece) => isSame(piece, chosen));
    const next = from ? nextByArrow(pieces, from, direction) : (here?.pieces[0]?.piece ?? null);
    if (next) editor.choose({ level: next.level, placement: next.placement });
  };
  const nudge = (alongX: number, alongY: number, mm: number): void => {
    const spot = inHand.live.get()?.spot;
    if (spot) inHand.move({ ...spot, xMm: spot.xMm + alongX * mm, yMm: spot.yMm + alongY * mm }, false);
  };
  const turn = (byDeg: number) => () => {
    if (chosen) inHand.turn(chosen, byDeg);
  };
  const stop = (): void => {
    if (hand) inHand.letGo();
    else if (isSwapping) setSwapping(false);
    else editor.choose(null);
  };

  return (
    <>
      {DIRECTIONS.map(([direction, word, x, y]) => (
        <Act
          key={direction}
          id={`load.${direction}`}
          name={hand ? `Nudge it ${word}` : `The next piece ${word}`}
          keys={direction}
          run={() => (hand ? nudge(x, y, NUDGE_MM) : go(direction))}
          isEnabled={() => inDrawing() || hand !== null}
        />
      ))}
      {DIRECTIONS.map(([direction, word, x, y]) => (
        <Act
          key={direction}
          id={`load.slightly.${direction}`}
          name={`Nudge it a little ${word}`}
          keys={`shift+${direction}`}
          run={() => nudge(x, y, SMALL_NUDGE_MM)}
          isEnabled={hand !== null}
        />
      ))}
      <Act
        id="load.pick-up"
        name={hand ? "Set the piece down" : "Pick the piece up"}
        keys="enter"
        run={() => (hand ? inHand.drop() : chosen && inHand.take(chosen, "keys"))}
        isEnabled={() => (hand !== null || canChange) && inDrawing()}
      />
      <Act
        id="load.back"
        name="Put it back where it was"
        keys="esc"
        run={stop}
        isEnabled={hand !== null || isSwapping || chosen !== null}
      />
      <Act id="load.turn-left" name="Turn it left" keys="q" run={turn(STEP_DEG)} isEnabled={canChange} />
      <Act id="load.turn-right" name="Turn it right" keys="e" run={turn(-STEP_DEG)} isEnabled={canChange} />
      <Act
        id="load.turn-left-a-little"
        name="Turn it a little to the left"
        keys="shift+q"
        run={turn(SMALL_STEP_DEG)}
        isEnabled={canChange}
      />
      <Act
        id="load.turn-right-a-little"
        name="Turn it a little to the right"
        keys="shift+e"
        run={turn(-SMALL_STEP_DEG)}
        isEnabled={canChange}
      />
      <Act
        id="load.level-up"
        name="Move the piece to the level above"
        keys="pageup"
        run={on((at) => carryTo(editor, at, at.level + 1))}
        isEnabled={canChange && chosen.level < plan.levels.length - 1}
      />
      <Act
        id="load.level-down"
        name="Move the piece to the level below"
        keys="pagedown"
        run={on((at) => carryTo(editor, at, at.level - 1))}
        isEnabled={canChange && chosen.level > 0}
      />
      <Act
        id="load.look-up"
        name="Look at the level above"
        keys="shift+pageup"
        run={() => editor.goTo(level + 1)}
        isEnabled={level < plan.levels.length - 1}
      />
      <Act
        id="load.look-down"
        name="Look at the level below"
        keys="shift+pagedown"
        run={() => editor.goTo(level - 1)}
        isEnabled={level > 0}
      />
      <Act
        id="load.swap"
        name="Let it change places with another"
        keys="s"
        run={() => setSwapping(!isSwapping)}
        isEnabled={canChange}
      />
      <Act
        id="load.clear"
        name="Set it clear of what is too near"
        keys="c"
        run={on((at) => setClear(editor, at))}
        isEnabled={canChange && editor.brokenPlaces.has(placeKey(chosen))}
      />
      <Act
        id="load.pin"
        name={chosen && editor.pins.has(placeKey(chosen)) ? "Unpin the piece" : "Pin the piece"}
        keys="p"
        run={on((at) => pinOrUnpin(editor, at))}
        isEnabled={canChange}
      />
      <Act
        id="load.take-out"
        name="Take the piece out"
        keys="delete"
        run={on((at) => takeOutOf(editor, at))}
        isEnabled={canChange}
      />
    </>
  );
}

/** One action of the load's own. */
export function Act(action: Omit<Action, "group">) {
  useAction({ ...action, group: "Load" });
  return null;
}
