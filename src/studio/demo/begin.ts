import { BadInput } from "../../measures/bad-input.ts";
import type { StudioRecords, StudioStore } from "../records/store.ts";
import { demoStudio } from "./demo-studio.ts";

/**
 * Begins a new studio with an invented one to look around in.
 *
 * @param now the moment, ISO 8601 in UTC
 * @param newId a new id each time
 * @throws BadInput where she has begun already; then nothing has happened
 */
export async function beginWithDemo(store: StudioStore, now: string, newId: () => string): Promise<void> {
  await store.read(refuseIfBegun);
  const demo = demoStudio(now, newId);
  await store.write(async (records) => {
    await refuseIfBegun(records);
    await records.settings.put(demo.settings);
    await records.kilns.add(...demo.kilns);
    await records.clayBodies.add(...demo.clayBodies);
    await records.glazes.add(...demo.glazes);
    await records.ware.add(...demo.ware);
    await records.loads.add(...demo.loads);
    await records.firings.add(...demo.firings);
    for (const { firingId, probe, readings } of demo.readings) await records.readings.add(firingId, probe, readings);
    await records.notes.add(...demo.notes);
    await records.programmes.add(...demo.programmes);
    await records.calibrations.add(...demo.calibrations);
    await records.upkeep.add(...demo.upkeep);
  });
}

/** Begins a new studio with nothing in it. Settings that were put say that she has begun. @throws BadInput as above */
export const beginEmpty = (store: StudioStore): Promise<void> =>
  store.write(async (records) => {
    await refuseIfBegun(records);
    await records.settings.put(await records.settings.get());
  });

/** Whether nothing is kept and she has not chosen how to begin. */
export const isNew = async (records: StudioRecords): Promise<boolean> =>
  (await records.isEmpty()) && !(await records.settings.arePut());

async function refuseIfBegun(records: StudioRecords): Promise<void> {
  if (await isNew(records)) return;
  throw new BadInput({
    code: "begun-already",
    path: "",
    found: "a studio that has begun",
    expected: "a new one: serve another folder with --data FOLDER, or restore an archive",
  });
}
