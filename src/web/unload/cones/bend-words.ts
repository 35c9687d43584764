import { type ConeName, conePlace, ladderOf } from "../../../firing/cones/cone.ts";
import { bendDeg } from "../../../firing/heat-work/bend.ts";
import { equivalentC, GROWTH_PER_C } from "../../../firing/heat-work/ladder-position.ts";
import type { SeenCone } from "../../../studio/records/firing-parts.ts";

/** One hour of the clock. A tip that was up at twelve lies on the plaque at six. */
export const STEP_DEG = 15;
export const DOWN_DEG = 90;
/** A cone is set leaning 8°: up to here it may not have moved (as src/studio/firings/level-heat.ts has it). */
const STANDS_BELOW_DEG = 12;

const HOURS = ["standing", "one o’clock", "two o’clock", "three o’clock", "four o’clock", "five o’clock", "down"];

/**
 * How far a cone is bent, as potters say it: by where its tip points on a clock it bends toward three on. A cone bends in
 * an arc, so that its tip has turned twice as far as the line from its foot to its tip leans: 15° of bend is an hour.
 * Common practice, no source.
 */
export function bendWords(degrees: number): string {
  if (degrees < STANDS_BELOW_DEG) return "standing";
  const hour = Math.min(6, Math.max(0, Math.round(degrees / STEP_DEG)));
  // Down is only what touches: a little short of it is a little short of six.
  if (hour === 6 && degrees < DOWN_DEG - 2) return "nearly down";
  return HOURS[hour] as string;
}

/** One step more or less bent, on the hours; never beyond standing or down. */
export function stepped(degrees: number, by: number): number {
  const hours = by > 0 ? Math.floor(degrees / STEP_DEG + 1e-9) : Math.ceil(degrees / STEP_DEG - 1e-9);
  return Math.min(DOWN_DEG, Math.max(0, (hours + by) * STEP_DEG));
}

/** How far a cone was foretold to bend on a level that gets so much heat work (its place on the cone ladder). */
export function foretoldBendDeg(ladder: number, cone: ConeName): number {
  const overC = equivalentC(ladder) - equivalentC(ladderOf(cone));
  return bendDeg(Math.exp(overC * (GROWTH_PER_C[conePlace(cone)] as number)));
}

/** "6 down, 7 at three o’clock, 8 standing", the coolest first; empty where none was seen. */
export function conesInWords(cones: readonly Pick<SeenCone, "cone" | "bendDeg">[]): string {
  return [...cones]
    .sort((a, b) => conePlace(a.cone) - conePlace(b.cone))
    .map(({ cone, bendDeg: degrees }) => {
      const words = bendWords(degrees);
      return `${cone} ${words.endsWith("o’clock") ? `at ${words}` : words}`;
    })
    .join(", ");
}
