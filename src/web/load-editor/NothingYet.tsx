import { addLevel } from "../../loading/editing/edit-levels.ts";
import { stacksOf } from "../../loading/editing/level-heights.ts";
import { Button, Empty, tell } from "../parts/index.ts";
import { type Editor, nothingIn } from "./use-editor.ts";

/** A load that nobody has planned yet. */
export function NothingYet({ editor }: { readonly editor: Editor }) {
  const { request, planning, isFixed } = editor;
  const pieces = request.ware.reduce((sum, { count }) => sum + count, 0);
  const byHand = (): void => {
    const { shelves, posts } = request.furniture;
    const stacks = stacksOf(posts);
    const stack = stacks.find(({ totalMm }) => totalMm >= request.rules.floorAirMm) ?? stacks[0];
    const shelf = shelves.find(({ count }) => count > 0);
    if (!shelf || !stack) {
      tell("That takes a shelf and three posts of one height. Enter them under the kiln first.");
      return;
    }
    const { heightsMm } = stack;
    editor.edit(addLevel(request, nothingIn(request), { above: null, shelf: shelf.name, heightsMm }), "began by hand");
  };
  return (
    <Empty
      title="Nothing stands in it yet"
      words={`${pieces === 1 ? "One piece waits" : `${pieces} pieces wait`} to go in. Let it be planned and then move what you like, or set every piece yourself.`}
      action={
        <>
          <Button
            look="main"
            isBusy={planning.running}
            isDisabled={isFixed && !planning.running}
            onPress={() => planning.plan("nothing")}
          >
            Plan it
          </Button>
          <Button isDisabled={isFixed} onPress={byHand}>
            Set it by hand
          </Button>
        </>
      }
    />
  );
}
