import { BadInput } from "../../measures/bad-input.ts";
import { earlierCalibration } from "../firings/earlier-calibration.ts";
import type { MeasuredRecords } from "../firings/firing-evidence.ts";
import { type LearnedFromFirings, learnFromFirings } from "../firings/learn.ts";
import { CALIBRATIONS } from "../records/calibration-record.ts";
import { Id } from "../records/fields.ts";
import { FIRINGS } from "../records/firing-record.ts";
import { KILNS } from "../records/kiln-record.ts";
import { LOADS } from "../records/load-record.ts";
import { recordPath } from "../records/refusals.ts";
import type { StudioRecords } from "../records/store.ts";
import { countOf } from "./in-words.ts";
import { command, Ids, input, NewId } from "./inputs.ts";
import { begun, kept } from "./keeping.ts";

const learnFrom = command({
  name: "learn-from",
  schema: input({ id: NewId, kilnId: Id("The kiln."), firingIds: Ids("A firing to learn from.") }),
  scope: () => "kilns",
  beforehand: async (records, { kilnId, firingIds }) => {
    const fired: MeasuredRecords[] = [];
    for (const id of new Set(firingIds)) fired.push(await measured(records, kilnId, id));
    const earlier = earlierCalibration(await records.calibrations.list({ kilnId }), kilnId, firingIds);
    return () => learnFromFirings(fired, earlier);
  },
  run: async (records, { id, kilnId, firingIds }, context, found) => {
    const kiln = await kept(records.kilns, KILNS, kilnId);
    const { calibration, learned } = found as LearnedFromFirings;
    const ids = [...new Set(firingIds)];
    await records.calibrations.add({
      ...begun(id, context),
      ...{ kilnId, at: context.now, firingIds: ids, calibration, learned },
    });
    return `Learned from ${countOf(ids.length, "firing")} of ${kiln.kiln.name}`;
  },
});

async function measured(records: StudioRecords, kilnId: string, id: string): Promise<MeasuredRecords> {
  const firing = await kept(records.firings, FIRINGS, id);
  const refuse = (found: string, expected: string): never => {
    throw new BadInput({ code: "nothing-to-learn", path: recordPath(FIRINGS, id), found, expected });
  };
  if (firing.kilnId !== kilnId) refuse("a firing of another kiln", "firings of one kiln");
  const loadId = firing.loadId ?? refuse("a firing without a load", "one whose load is known");
  return { firing, load: await kept(records.loads, LOADS, loadId), readings: await records.readings.of(id) };
}

const removeCalibration = command({
  name: "remove-calibration",
  schema: input({ id: Id("The calibration.") }),
  scope: () => "kilns",
  run: async (records, { id }) => {
    const before = await kept(records.calibrations, CALIBRATIONS, id);
    await records.calibrations.remove(id);
    return `Forgot what ${countOf(before.firingIds.length, "firing")} taught`;
  },
});

export const LEARN_COMMANDS = [learnFrom, removeCalibration];
