import { placeKey } from "../../studio/loads/places.ts";
import { Sign } from "../parts/index.ts";
import type { Editor } from "./use-editor.ts";
import { isSame } from "./use-editor.ts";
import { bySheetNumbers } from "./words/by-sheet-numbers.ts";
import { piecesWords, standingWords } from "./words/place-words.ts";

interface RestingLineProps {
  readonly editor: Editor;
  readonly isSwapping: boolean;
  /** Posts and shelves are moved, not pieces. */
  readonly isFurniture: boolean;
}

/** What is told under the drawing while nothing is in her hand: the chosen piece, or what can be done. */
export function RestingLine({ editor, isSwapping, isFurniture }: RestingLineProps) {
  const { chosen, here, units, level, broken, brokenPlaces } = editor;
  const numbered = here?.pieces.find(({ piece }) => isSame(piece, chosen));
  if (isFurniture) return <p>Drag a post, or use the arrow keys on it. Its whole column comes along.</p>;
  if (isSwapping && numbered)
    return <p>Press the piece that the {numbered.piece.ware.name} is to change places with.</p>;
  if (!numbered) {
    if (!here) return <p>No shelf lies in the kiln. Put in a level under Shelves.</p>;
    const count = here.pieces.length;
    return (
      <p>
        Level {level + 1}, {count === 0 ? "empty" : piecesWords(count)}. {hint(editor, count)}
      </p>
    );
  }
  const key = placeKey(numbered.piece);
  if (!brokenPlaces.has(key)) return <p>{standingWords(numbered, units)}</p>;
  const problem = broken.find(({ places }) =>
    places.some((place) => place.kind === "piece" && placeKey(place) === key),
  );
  return (
    <p>
      <Sign kind="breaks">{problem ? bySheetNumbers(problem.message, editor.drawn) : "Breaks a rule"}</Sign>
    </p>
  );
}

function hint({ isFixed, load, planning }: Editor, count: number): string {
  if (load.state === "fired" || load.state === "unpacked") return "It has been fired: it stays as it was.";
  if (planning.running) return "It can be changed once the planning is over.";
  if (isFixed) return "";
  return count === 0 ? "Press one that waits to put it in." : "Press one, or drag it.";
}
