import { DESCRIBED_KILN, DESCRIBED_LOAD } from "../../calibration/testing/hidden-kiln.ts";
import { watchFiring } from "../watch-firing.ts";
import { byStraightLine, coneC, type HiddenFiring } from "./watched-hidden.ts";

/** Shares of the way to what is waited for at which it is asked how long yet. */
export const MARKS = [0.02, 0.25, 0.5, 0.75, 0.9] as const;

/** How far off, minutes, at a mark: the watch, in its own sigmas too; the straight line (null where it leads away). */
export interface Miss {
  readonly what: "cone" | "opening";
  readonly mark: number;
  readonly byModel: number | null;
  readonly inSigmas: number | null;
  readonly byLine: number | null;
}

/** Watches a hidden firing with the kiln as its owner described it, and asks at every mark. */
export function missesOf({ programme, readings, cone, coneAtMin, openAtMin }: HiddenFiring): Miss[] {
  const watch = watchFiring({ kiln: DESCRIBED_KILN, load: DESCRIBED_LOAD }, programme, { cone });
  const due = [
    ...MARKS.map((mark) => ({ what: "cone" as const, mark, truthMin: coneAtMin })),
    ...MARKS.map((mark) => ({ what: "opening" as const, mark, truthMin: openAtMin })),
  ].sort((a, b) => a.mark * a.truthMin - b.mark * b.truthMin);
  const misses: Miss[] = [];
  for (const { minute, tempC } of readings) {
    watch.read(minute, tempC);
    for (let next = due[0]; next !== undefined && minute >= next.mark * next.truthMin; next = due[0]) {
      due.shift();
      const { what, mark, truthMin } = next;
      const outlook = watch.state().outlook;
      const found = what === "cone" ? outlook?.cone?.probe : outlook?.cool.find((each) => each.tempC === 95)?.at;
      const line = byStraightLine(readings, minute, what === "cone" ? coneC(cone) : 95);
      misses.push({
        what,
        mark,
        byModel: found ? found.atMin - truthMin : null,
        inSigmas: found ? (found.atMin - truthMin) / found.spreadMin : null,
        byLine: line === null ? null : line - truthMin,
      });
    }
  }
  return misses;
}
