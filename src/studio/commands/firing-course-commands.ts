import { Type } from "typebox";
import { BadInput } from "../../measures/bad-input.ts";
import { checkMoment, Id, Moment } from "../records/fields.ts";
import { FIRINGS, type FiringRecord, FiringRecordSchema, MeterReadingSchema } from "../records/firing-record.ts";
import type { LoadState } from "../records/load-record.ts";
import { recordPath } from "../records/refusals.ts";
import type { StudioRecords } from "../records/store.ts";
import { command, input } from "./inputs.ts";
import { changeKept, kept } from "./keeping.ts";

// A firing's course as she tells it. Wareboard switches nothing: these write down what happened at the kiln.

const at = Moment("When it happened; later than now is now.");
const scope = ({ id }: { id: string }) => `firing:${id}`;

const startFiring = command({
  name: "start-firing",
  schema: input({ id: Id("The firing."), at }),
  scope,
  run: async (records, { id, at: told }, { now }) => {
    const before = await kept(records.firings, FIRINGS, id);
    if (before.state !== "planned") throw notNow(before, "one that has not started yet");
    const [running] = await records.firings.list({ kilnId: before.kilnId, state: "firing" });
    if (running) throw notNow(before, `the end of ${running.name} first, which still fires in this kiln`);
    const startedAt = upToNow(told, now);
    await changeKept(records.firings, before, { ...before, state: "firing", startedAt }, now);
    await bringLoadTo(records, before.loadId, "loaded", now);
    return `Wrote down the start of ${before.name}`;
  },
});

const shutOff = command({
  name: "shut-off",
  schema: input({ id: Id("The firing."), at }),
  scope,
  run: async (records, { id, at: told }, { now }) => {
    const before = await kept(records.firings, FIRINGS, id);
    if (before.state !== "firing") throw notNow(before, "one that fires");
    await changeKept(records.firings, before, { ...before, state: "cooling", shutOffAt: upToNow(told, now) }, now);
    return `Wrote down the shut-off of ${before.name}`;
  },
});

const endFiring = command({
  name: "end-firing",
  schema: input({
    id: Id("The firing."),
    at,
    brokenOff: Type.Optional(Type.Boolean({ description: "True where it ended before its programme did." })),
  }),
  scope,
  run: async (records, { id, at: told, brokenOff = false }, { now }) => {
    const before = await kept(records.firings, FIRINGS, id);
    if (before.state !== "firing" && before.state !== "cooling") throw notNow(before, "one that fires or cools");
    await endNow(records, before, upToNow(told, now), brokenOff, now);
    return brokenOff ? `Wrote down that ${before.name} was broken off` : `Wrote down the end of ${before.name}`;
  },
});

/** Writes down that a firing is over; its load has been fired, unless it was broken off. */
export async function endNow(
  records: StudioRecords,
  before: FiringRecord,
  endedAt: string,
  brokenOff: boolean,
  now: string,
): Promise<FiringRecord> {
  const shutOffAt = before.shutOffAt ?? (brokenOff ? endedAt : undefined);
  const after: FiringRecord = {
    ...before,
    state: brokenOff ? "broken off" : "finished",
    endedAt,
    ...(shutOffAt === undefined ? {} : { shutOffAt }),
  };
  const changed = await changeKept(records.firings, before, after, now);
  if (!brokenOff) await bringLoadTo(records, before.loadId, "fired", now);
  return changed;
}

const COMES_AFTER: Readonly<Record<"loaded" | "fired", readonly LoadState[]>> = {
  loaded: ["planned", "loading"],
  fired: ["planned", "loading", "loaded"],
};

/** Brings a load as far as its firing has come; one that is further already stays. */
async function bringLoadTo(
  records: StudioRecords,
  loadId: string | null,
  state: "loaded" | "fired",
  now: string,
): Promise<void> {
  const load = loadId === null ? null : await records.loads.get(loadId);
  if (load && COMES_AFTER[state].includes(load.state)) await changeKept(records.loads, load, { ...load, state }, now);
}

const seeCones = command({
  name: "see-cones",
  schema: input({
    id: Id("The firing."),
    cones: Type.Array(FiringRecordSchema.properties.cones.items, {
      maxItems: 500,
      description: "All witness cones of this firing as seen; takes the place of what was seen before.",
    }),
  }),
  scope,
  run: async (records, { id, cones }, { now }) => {
    const before = await kept(records.firings, FIRINGS, id);
    const load = before.loadId === null ? null : await records.loads.get(before.loadId);
    const levels = load?.plan?.levels.length ?? 50;
    cones.forEach(({ level }, i) => {
      if (level >= levels) throw noSuchLevel(`cones[${i}].level`, level, levels);
    });
    await changeKept(records.firings, before, { ...before, cones }, now);
    return cones.length === 0 ? `No cones in ${before.name}` : `Wrote down ${cones.length} cones of ${before.name}`;
  },
});

const noSuchLevel = (path: string, level: number, levels: number): BadInput =>
  new BadInput({
    code: "unknown-place",
    path,
    found: `level ${level}`,
    expected: `0 to ${levels - 1}, from the floor`,
  });

const readMeter = command({
  name: "read-meter",
  schema: input({ id: Id("The firing."), ...MeterReadingSchema.properties }),
  scope,
  run: async (records, { id, at: told, kWh }, { now }) => {
    const before = await kept(records.firings, FIRINGS, id);
    checkMoment(told, "at");
    // The meter is read once a moment; the same moment again puts it right.
    const others = before.meterReadings.filter((each) => each.at !== told);
    const meterReadings = [...others, { at: told, kWh }].sort((a, b) => (a.at < b.at ? -1 : 1));
    await changeKept(records.firings, before, { ...before, meterReadings }, now);
    return `Read the meter: ${kWh} kWh`;
  },
});

/** @throws BadInput where it is no moment */
export function upToNow(told: string, now: string): string {
  checkMoment(told, "at");
  return told > now ? now : told;
}

export const notNow = (firing: FiringRecord, expected: string): BadInput =>
  new BadInput({
    code: "not-now",
    path: recordPath(FIRINGS, firing.id),
    found: `${firing.name}, which is ${firing.state}`,
    expected,
  });

export const FIRING_COURSE_COMMANDS = [startFiring, shutOff, endFiring, seeCones, readMeter];
