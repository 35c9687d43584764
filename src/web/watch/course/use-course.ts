import { useMemo } from "react";
import type { FiringRecord } from "../../../studio/records/firing-record.ts";
import { undoLast } from "../../loads/undo-last.ts";
import { tell, wordsOf } from "../../parts/index.ts";
import { type GiveCommand, useCommand } from "../../studio/hooks.ts";

/** What she tells of a firing under way. Each only writes down what was done at the kiln. True where it was written. */
export interface Course {
  readonly shutOff: (firing: FiringRecord, at: string) => Promise<boolean>;
  readonly end: (firing: FiringRecord, at: string) => Promise<boolean>;
  readonly breakOff: (firing: FiringRecord, at: string) => Promise<boolean>;
  readonly readMeter: (firing: FiringRecord, at: string, kWh: number) => Promise<boolean>;
}

export function useCourse(): Course {
  const command = useCommand();
  return useMemo(() => courseOf(command), [command]);
}

function courseOf(command: GiveCommand): Course {
  const write = async (
    firing: FiringRecord,
    [name, input]: readonly [string, object],
    words: string,
    show: (before: FiringRecord) => FiringRecord,
  ): Promise<boolean> => {
    try {
      const { id } = firing;
      // Shown at once: she may be at the kiln, and the studio out of reach.
      const given = command(name, { id, ...input }, (cache) => cache.patch("firings", id, show));
      given.then(
        () => {},
        (error: unknown) => tell(wordsOf(error)),
      );
      await given;
      tell(words, () => void undoLast(`firing:${id}`));
      return true;
    } catch {
      return false;
    }
  };
  return {
    shutOff: (firing, at) =>
      write(firing, ["shut-off", { at }], "Written down: it is shut off", (was) => ({
        ...was,
        state: "cooling",
        shutOffAt: at,
      })),
    end: (firing, at) =>
      write(firing, ["end-firing", { at }], "Written down: it is opened", (was) => ({
        ...was,
        state: "finished",
        endedAt: at,
      })),
    breakOff: (firing, at) =>
      write(firing, ["end-firing", { at, brokenOff: true }], "Written down: broken off", (was) => ({
        ...was,
        state: "broken off",
        endedAt: at,
        shutOffAt: was.shutOffAt ?? at,
      })),
    readMeter: (firing, at, kWh) =>
      write(firing, ["read-meter", { at, kWh }], `Written down: the meter at ${kWh} kWh`, (was) => ({
        ...was,
        meterReadings: [...was.meterReadings.filter((each) => each.at !== at), { at, kWh }].sort((a, b) =>
          a.at < b.at ? -1 : 1,
        ),
      })),
  };
}
