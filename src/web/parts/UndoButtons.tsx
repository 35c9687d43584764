import { useAction } from "../actions/registry.ts";
import { type UndoRedo, useUndo } from "../studio/hooks.ts";
import { IconButton } from "./Button.tsx";
import { RedoIcon, UndoIcon } from "./icons.tsx";
import { tell } from "./tell.ts";
import { wordsOf } from "./words-of.ts";

/** Undo and redo within one scope, as buttons and as keys. */
export function UndoButtons({ scope }: { readonly scope: string }) {
  const { undo, redo, canUndo, canRedo, undoText, redoText } = useUndo(scope);
  const undoLabel = undoText === "" ? "Undo" : `Undo: ${undoText}`;
  const redoLabel = redoText === "" ? "Redo" : `Redo: ${redoText}`;
  const run = (what: UndoRedo["undo"], done: string) => () => {
    what().then(
      () => tell(done),
      (error: unknown) => tell(wordsOf(error)),
    );
  };
  const undoIt = run(undo, undoText === "" ? "Undone" : `Undone: ${undoText}`);
  const redoIt = run(redo, redoText === "" ? "Done again" : `Done again: ${redoText}`);
  useAction({ id: "undo", name: undoLabel, keys: "mod+z", group: "Undo", run: undoIt, isEnabled: canUndo });
  useAction({ id: "redo", name: redoLabel, keys: "mod+shift+z", group: "Undo", run: redoIt, isEnabled: canRedo });
  return (
    <>
      <IconButton label={undoLabel} icon={<UndoIcon />} onPress={undoIt} isDisabled={!canUndo} />
      <IconButton label={redoLabel} icon={<RedoIcon />} onPress={redoIt} isDisabled={!canRedo} />
    </>
  );
}
