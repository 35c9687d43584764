import type { ReadingsKept } from "../../studio/api/readings-contract.ts";
import type { LoggerRecord } from "../../studio/records/logger-record.ts";
import type { Reading } from "../../studio/records/reading.ts";
import { Refusal } from "../answering/refusals.ts";
import type { FiringOfMoment } from "./firing-of-moment.ts";
import type { ReadingKeeper } from "./reading-keeper.ts";

/** Takes what loggers send, by whichever way it comes, to the firing it belongs to. */
export class Feed {
  readonly #keeper: ReadingKeeper;
  readonly #firings: FiringOfMoment;

  constructor(keeper: ReadingKeeper, firings: FiringOfMoment) {
    this.#keeper = keeper;
    this.#firings = firings;
  }

  /**
   * Keeps a logger's readings; comes back when they are on the disk.
   *
   * @param readings at least one
   * @param gatherMs as `ReadingKeeper.keep` has it
   * @throws Refusal 409 where none of them belongs to a firing
   */
  async take({ kilnId, probe }: LoggerRecord, readings: readonly Reading[], gatherMs?: number): Promise<ReadingsKept> {
    const earliest = readings.map(({ at }) => at).sort()[0] as string;
    const firings = await this.#firings.of(kilnId, earliest);
    const byFiring = Map.groupBy(readings, ({ at }) => firings.at(at));
    const aside = byFiring.get(null) ?? [];
    byFiring.delete(null);
    if (byFiring.size === 0) throw noFiring(firings.isUnderWay);
    await Promise.all(
      [...byFiring].map(([firingId, its]) =>
        this.#keeper.keep({ firingId: firingId as string, probe, readings: its }, gatherMs),
      ),
    );
    return { kept: readings.length - aside.length, leftAside: aside.length };
  }
}

const noFiring = (isUnderWay: boolean): Refusal =>
  new Refusal(409, {
    code: "no-firing-under-way",
    path: "",
    found: isUnderWay ? "readings from before this kiln's firing began" : "no firing of this kiln under way",
    expected: "a firing that has begun: start it in Wareboard when the kiln is switched on; until then nothing is kept",
  });
