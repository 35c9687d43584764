import type { Chance } from "../../measures/seeded-chance.ts";
import { givenFrame, pieceStanding } from "./given-frame.ts";
import { LoadSearch } from "./load-search.ts";
import type { Around } from "./plan-around.ts";
import type { Stand } from "./stand.ts";
import type { LoadTask } from "./task.ts";

// Searches that begin with nothing but what stays; one more begins with everything that stood there.
const FRESH = 3;

/** Searches on the given furniture among the kept pieces: first from the given plan as it stands, then from less. */
export function* searchAround(task: LoadTask, around: Around, chance: Chance): Generator<LoadSearch> {
  const frame = givenFrame(task, around);
  const first = new LoadSearch(task, frame, chance);
  around.free.forEach((placements, level) => {
    const stand = frame.stands[level] as Stand;
    first.setDown(
      level,
      placements.flatMap((placement) => pieceStanding(task, stand, placement) ?? []),
    );
  });
  yield first;
  for (let i = 0; i < FRESH; i++) yield new LoadSearch(task, frame, chance);
}
