import { LID_LIFTS_C } from "../../firing/prediction/cool-steps.ts";
import type { WatchState } from "../../firing/watching/watch-firing.ts";
import type { Noticed } from "../notices/firing-notices.ts";

/** So long before a cone goes down she is told to look: it bends through its last half in about that time. Common practice, no source. */
const CONE_AHEAD_MIN = 30;

export const LOOK_KINDS = ["cone due", "may be opened"] as const;
type LookKind = (typeof LOOK_KINDS)[number];

/** A moment to look, and until when; null while it is. */
export interface LookTime {
  readonly kind: LookKind;
  readonly isNow: boolean;
  readonly message: string;
}

/** Which of the moments she waits for are there, by how a firing stands. One that was there before may be over. */
export function lookTimes({ outlook, place, tempC }: WatchState, nowMin: number): LookTime[] {
  const times: LookTime[] = [];
  const cone = outlook?.cone;
  if (cone?.probe && place?.doing !== "over") {
    const toGoMin = cone.probe.atMin - nowMin;
    const spread = Math.max(1, Math.round(cone.probe.spreadMin));
    times.push({
      kind: "cone due",
      isNow: toGoMin > 0 && toGoMin <= CONE_AHEAD_MIN,
      message: `Cone ${cone.cone} is expected to go down in about ${Math.max(1, Math.round(toGoMin))} min (give or take ${spread}). Look at the cones now, with eye protection, and be at the kiln when its programme ends.`,
    });
  }
  const open = outlook?.cool.find((step) => step.tempC === LID_LIFTS_C);
  if (open && place?.doing === "over" && tempC !== null) {
    times.push({
      kind: "may be opened",
      // By the reading too: what was foretold may be early.
      isNow: open.at !== null && open.at.atMin <= nowMin && tempC <= LID_LIFTS_C,
      message: `It reads ${Math.round(tempC)} °C, and by now its ware should be under ${LID_LIFTS_C} °C: the lid may be lifted. Your kiln's own manual comes first; what is inside is still hot.`,
    });
  }
  return times;
}

/**
 * The moments to look as they are to be told: those that were told before stay told, and end when they are over.
 *
 * @param told those told before
 */
export function toldLookTimes(told: readonly Noticed[], times: readonly LookTime[], now: string): Noticed[] {
  const known = told.map((each) => {
    const time = times.find(({ kind }) => kind === each.kind);
    const isOver = each.until === null && (time === undefined || !time.isNow) && each.kind === "cone due";
    return isOver ? { ...each, until: now } : each;
  });
  const begun = times.filter(({ kind, isNow }) => isNow && !told.some((each) => each.kind === kind));
  return [...known, ...begun.map(({ kind, message }) => ({ kind, since: now, until: null, message }))];
}
