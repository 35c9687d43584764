import { useState } from "react";
import { addBeside, lacksOtherHalf } from "../../../loading/editing/add-beside.ts";
import { addLevel } from "../../../loading/editing/edit-levels.ts";
import type { LoadPlan } from "../../../loading/load-plan.ts";
import { AddIcon, Button, ChoiceField } from "../../parts/index.ts";
import { useSettings } from "../../studio/hooks.ts";
import { shelvesLeft, stackKey, stacksLeft, stackWords } from "./furniture-words.ts";
import styles from "./Shelves.module.css";
import type { ShelvesPanelProps } from "./shelves-props.ts";

/** A new level: which shelf, on which posts, over which level. */
export function AddLevel({ request, plan, level, onLevel, onEdit }: ShelvesPanelProps) {
  const { lengthUnits } = useSettings();
  const [wantsOne, setOpen] = useState(false);
  const isOpen = wantsOne || plan.levels.length === 0;
  const shelves = shelvesLeft(request, plan);
  const stacks = stacksLeft(request, plan);
  const [wanted, setWanted] = useState({ shelf: "", stack: "", above: "" });
  const shelf = shelves.find(({ name }) => name === wanted.shelf) ?? shelves[0];
  const stack = stacks.find(({ heightsMm }) => stackKey(heightsMm) === wanted.stack) ?? usual(stacks, plan);
  const places = ["floor", ...plan.levels.map((_, index) => String(index))].reverse();
  const above = places.includes(wanted.above) ? wanted.above : (places[0] as string);
  const [half] = [plan.levels[level]].filter(
    (each) => lacksOtherHalf(request, plan, level) && shelves.some(({ name }) => name === each?.shelf),
  );
  const put = () => {
    if (!shelf || !stack) return;
    const on = above === "floor" ? null : Number(above);
    const edited = addLevel(request, plan, { above: on, shelf: shelf.name, heightsMm: stack.heightsMm });
    const at = on === null ? 0 : on + 1;
    onEdit(edited, `put in a level${on === null ? " on the floor" : ` over level ${on + 1}`}`);
    onLevel(Math.min(at, edited.plan.levels.length - 1));
    setOpen(false);
  };
  if (!shelf || !stack) {
    return (
      <p className={styles.soft}>
        {shelf ? "No three posts alike are free for another level." : "Every shelf lies in the kiln already."}
      </p>
    );
  }
  if (!isOpen) {
    return (
      <div className={styles.buttons}>
        <Button icon={<AddIcon />} onPress={() => setOpen(true)}>
          Put in a level
        </Button>
        {half && (
          <Button
            onPress={() => {
              const edited = addBeside(request, plan, level);
              onEdit(edited, `put the other half beside level ${level + 1}`);
            }}
          >
            Put the other half beside it
          </Button>
        )}
      </div>
    );
  }
  return (
    <form
      className={styles.add}
      onSubmit={(event) => {
        event.preventDefault();
        put();
      }}
    >
      <ChoiceField
        label="Shelf"
        options={shelves.map(({ name, count }) => ({ id: name, label: `${name} (${count} left)` }))}
        value={shelf.name}
        onChange={(name) => setWanted({ ...wanted, shelf: name })}
      />
      <ChoiceField
        label="On posts of"
        options={stacks.map(({ heightsMm }) => ({
          id: stackKey(heightsMm),
          label: stackWords(heightsMm, lengthUnits),
        }))}
        value={stackKey(stack.heightsMm)}
        onChange={(key) => setWanted({ ...wanted, stack: key })}
      />
      {places.length > 1 && (
        <ChoiceField
          label="Standing on"
          options={places.map((id) => ({ id, label: id === "floor" ? "the floor" : `level ${Number(id) + 1}` }))}
          value={above}
          onChange={(id) => setWanted({ ...wanted, above: id })}
        />
      )}
      <div className={styles.buttons}>
        <Button look="main" isSubmit>
          Put it in
        </Button>
        {plan.levels.length > 0 && (
          <Button look="quiet" onPress={() => setOpen(false)}>
            Leave it
          </Button>
        )}
      </div>
    </form>
  );
}

/** The lowest level stands as low as air beneath it allows, others about as high as a mug needs. */
const FIRST_MM = 25;
const NEXT_MM = 100;

function usual(stacks: ReturnType<typeof stacksLeft>, plan: LoadPlan) {
  const least = plan.levels.length === 0 ? FIRST_MM : NEXT_MM;
  return stacks.find(({ totalMm }) => totalMm >= least) ?? stacks.at(-1);
}
