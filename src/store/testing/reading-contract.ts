import fc from "fast-check";
import { afterAll, beforeAll, beforeEach, describe, expect, test } from "vitest";
import type { Reading } from "../../studio/records/reading.ts";
import type { StudioStore } from "../../studio/records/store.ts";
import * as sample from "./sample-records.ts";
import type { ContractPlace } from "./store-contract.ts";

const BEGIN_MS = Date.parse("2026-11-20T08:00:00.000Z");
const moment = (second: number): string => new Date(BEGIN_MS + second * 1000).toISOString();
const reading = (second: number, tempC: number): Reading => ({ at: moment(second), tempC });

/** What every database has to do for readings and their roll-ups. */
export function readingContract(name: string, place: () => ContractPlace): void {
  describe(`readings on ${name}`, () => {
    let store: StudioStore;
    beforeAll(async () => {
      store = await place().openEmpty();
    });
    beforeEach(() =>
      store.write(async (records) => {
        await records.clear();
        await sample.fillStudio(records);
      }),
    );
    afterAll(() => store?.close());
    const keep = (...readings: readonly Reading[]) =>
      store.write((records) => records.readings.add("firing-2", "middle", readings));
    const minutes = (span = {}) => store.read((records) => records.readings.rolledUp("firing-2", "minute", span));

    test("are gathered by minute and hour, by hand: count, least, most, mean, first and last", async () => {
      await keep(reading(0, 20), reading(30, 26), reading(59.999, 23), reading(60, 30), reading(3600, 90));
      const [series] = await minutes();
      expect(series).toMatchObject({ firingId: "firing-2", probe: "middle" });
      expect(series?.rollUps).toEqual([
        { at: moment(0), count: 3, leastC: 20, mostC: 26, meanC: 23, firstC: 20, lastC: 23 },
        { at: moment(60), count: 1, leastC: 30, mostC: 30, meanC: 30, firstC: 30, lastC: 30 },
        { at: moment(3600), count: 1, leastC: 90, mostC: 90, meanC: 90, firstC: 90, lastC: 90 },
      ]);
      const [hours] = await store.read((records) => records.readings.rolledUp("firing-2", "hour"));
      expect(hours?.rollUps.map(({ at, count, lastC }) => [at, count, lastC])).toEqual([
        [moment(0), 4, 30],
        [moment(3600), 1, 90],
      ]);
    });

    test("are shown by span, the earliest first where there are too many, and by probe", async () => {
      await keep(reading(0, 20), reading(70, 21), reading(130, 22), reading(190, 23));
      await store.write((records) => records.readings.add("firing-2", "lid", [reading(10, 50)]));
      const span = { from: moment(75), to: moment(190), most: 1 };
      const raw = await store.read((records) => records.readings.within("firing-2", span));
      expect(raw).toEqual([{ firingId: "firing-2", probe: "middle", readings: [reading(130, 22)] }]);
      // The minute a span begins in is there whole.
      expect((await minutes(span)).map(({ probe, rollUps }) => [probe, rollUps.map(({ at }) => at)])).toEqual([
        ["middle", [moment(60)]],
      ]);
      expect((await minutes()).map(({ probe }) => probe)).toEqual(["lid", "middle"]);
    });

    test("however they come, late, twice, corrected, in pieces, roll up as they would at once", async () => {
      const one = fc.record({ second: fc.integer({ min: 0, max: 7500 }), tempC: fc.integer({ min: 0, max: 1300 }) });
      const pieces = fc.array(fc.array(one, { minLength: 1, maxLength: 12 }), { minLength: 1, maxLength: 6 });
      await fc.assert(
        fc.asyncProperty(pieces, async (sent) => {
          await store.write((records) => records.readings.remove("firing-2"));
          for (const piece of sent) await keep(...piece.map(({ second, tempC }) => reading(second, tempC)));
          const latest = new Map(sent.flat().map(({ second, tempC }) => [moment(second), tempC]));
          for (const [period, letters] of [
            ["minute", 16],
            ["hour", 13],
          ] as const) {
            const [series] = await store.read((records) => records.readings.rolledUp("firing-2", period));
            const wanted = Map.groupBy([...latest].sort(), ([at]) => at.slice(0, letters));
            expect(series?.rollUps).toEqual(
              [...wanted].map(([start, readings]) => {
                const temps = readings.map(([, tempC]) => tempC);
                return {
                  at: expect.stringMatching(`^${start}`),
                  count: temps.length,
                  leastC: Math.min(...temps),
                  mostC: Math.max(...temps),
                  meanC: expect.closeTo(temps.reduce((sum, each) => sum + each, 0) / temps.length, 9),
                  firstC: temps[0],
                  lastC: temps.at(-1),
                };
              }),
            );
          }
        }),
        { numRuns: 25 },
      );
    });

    test("from before there were roll-ups are gathered when asked for, and kept up from then on", async () => {
      await keep(reading(0, 20), reading(30, 30));
      await place().tamper(store, `delete from "readingRollUps"`);
      const counts = async () =>
        (await minutes()).map(({ rollUps }) => rollUps.map(({ count, meanC }) => [count, meanC]));
      expect(await counts()).toEqual([[[2, 25]]]);
      await keep(reading(40, 40));
      expect(await counts()).toEqual([[[3, 30]]]);
    });

    test("go with their firing, roll-ups and all", async () => {
      await keep(reading(0, 20));
      await store.write((records) => records.firings.remove("firing-2"));
      expect(await minutes()).toEqual([]);
    });
  });
}
