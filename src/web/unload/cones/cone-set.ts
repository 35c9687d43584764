import { CONES, type ConeName, conePlace, isCone, isHalfCone } from "../../../firing/cones/cone.ts";
import type { SeenCone } from "../../../studio/records/firing-parts.ts";
import type { FiringRecord } from "../../../studio/records/firing-record.ts";

/** What a cone of a shelf is for: the one before, the one meant, the one after. */
export type ConePart = "guide" | "firing" | "guard";

export interface SetCone {
  readonly part: ConePart;
  readonly cone: ConeName;
}

/** Three cones as they are set side by side: guide, firing and guard cone, a whole cone apart. Common practice, no source. */
export function coneSet(firing: ConeName): SetCone[] {
  const whole = CONES.filter((cone) => cone === firing || !isHalfCone(cone));
  const at = whole.indexOf(firing);
  const parts: readonly (readonly [ConePart, ConeName | undefined])[] = [
    ["guide", whole[at - 1]],
    ["firing", firing],
    ["guard", whole[at + 1]],
  ];
  return parts.flatMap(([part, cone]) => (cone === undefined ? [] : [{ part, cone }]));
}

/** The cone a firing was meant for, as far as anything tells it: its foretelling, else its programme; null where nothing does. */
export function meantCone({ foretold, programme }: Pick<FiringRecord, "foretold" | "programme">): ConeName | null {
  if (foretold?.cone) return foretold.cone;
  const named = programme?.cone ?? "";
  return isCone(named) ? named : null;
}

/** One cone to look at on a shelf, and how it was seen; null where it was not yet. */
export interface ShelfCone {
  readonly cone: ConeName;
  readonly part: ConePart | null;
  readonly place: string;
  readonly bendDeg: number | null;
}

/** The cones of one shelf: the three of the set, and any others that were seen there, coolest first. */
export function shelfCones(seen: readonly SeenCone[], level: number, meant: ConeName | null): ShelfCone[] {
  const here = seen.filter((each) => each.level === level);
  const set = meant === null ? [] : coneSet(meant);
  const cones = set.map(({ cone, part }): ShelfCone => {
    const found = here.find((each) => each.cone === cone);
    return { cone, part, place: found?.place ?? "", bendDeg: found?.bendDeg ?? null };
  });
  const others = here
    .filter((each) => !cones.some(({ cone, place }) => cone === each.cone && place === each.place))
    .map(({ cone, place, bendDeg }): ShelfCone => ({ cone, part: null, place, bendDeg }));
  return [...cones, ...others].sort((a, b) => conePlace(a.cone) - conePlace(b.cone));
}

/** All cones as seen after one was looked at; null: it was not seen after all. */
export function conesAfter(
  seen: readonly SeenCone[],
  level: number,
  { cone, place }: Pick<ShelfCone, "cone" | "place">,
  bendDeg: number | null,
): SeenCone[] {
  const isSame = (each: SeenCone): boolean => each.level === level && each.cone === cone && each.place === place;
  const now = bendDeg === null ? [] : [{ level, cone, bendDeg, place }];
  if (seen.some(isSame)) return seen.flatMap((each) => (isSame(each) ? now : [each]));
  return [...seen, ...now].sort((a, b) => a.level - b.level || conePlace(a.cone) - conePlace(b.cone));
}
