import { type Static, Type } from "typebox";
import { ProgrammeSchema, readProgramme } from "../../firing/programme/programme.ts";
import { BadInput, shown } from "../../measures/bad-input.ts";
import { Name, OneOf } from "../../measures/schema.ts";
import { checkMoment, Id, Moment, orNull, stamps } from "./fields.ts";
import { type RecordKind, within } from "./record-kind.ts";

/** How far a firing has come. "broken off" is one that ended before its programme did. */
export const FIRING_STATES = ["planned", "firing", "cooling", "finished", "broken off"] as const;
export type FiringState = (typeof FIRING_STATES)[number];

/** What the electricity meter showed. */
export const MeterReadingSchema = Type.Object(
  { at: Moment("When it was read."), kWh: Type.Number({ minimum: 0, maximum: 1e9 }) },
  { additionalProperties: false },
);
export type MeterReading = Static<typeof MeterReadingSchema>;

/** One firing. Its temperatures are kept apart, as readings. */
export const FiringRecordSchema = Type.Object(
  {
    id: Id("The firing."),
    kilnId: Id("The kiln."),
    loadId: orNull(Id("What stood in it.")),
    name: Name("What she calls it."),
    state: OneOf(FIRING_STATES, "How far it has come."),
    programme: orNull(ProgrammeSchema),
    startedAt: orNull(Moment("When it was switched on.")),
    endedAt: orNull(Moment("When it was over.")),
    meterReadings: Type.Array(MeterReadingSchema, { maxItems: 10000 }),
    ...stamps,
  },
  { additionalProperties: false },
);
export type FiringRecord = Static<typeof FiringRecordSchema>;

export const FIRINGS: RecordKind<typeof FiringRecordSchema> = {
  name: "firings",
  one: "firing",
  schema: FiringRecordSchema,
  refersTo: { kilnId: "kilns", loadId: "loads" },
  versioned: false,
  check: ({ programme, state, startedAt, endedAt, meterReadings }) => {
    if (programme !== null) within("programme", () => readProgramme(programme));
    if (state !== "planned" && startedAt === null) {
      const expected = `the moment it was switched on, for it is ${state}`;
      throw new BadInput({ code: "missing-field", path: "startedAt", found: "null", expected });
    }
    if (endedAt !== null && (startedAt === null || endedAt < startedAt)) {
      throw new BadInput({ code: "wrong-order", path: "endedAt", found: endedAt, expected: "no end before the start" });
    }
    meterReadings.forEach(({ at, kWh }, i) => {
      checkMoment(at, `meterReadings[${i}].at`);
      const before = meterReadings[i - 1];
      if (before && at < before.at) wrongOrder(`meterReadings[${i}].at`, at, "readings in order of time");
      if (before && kWh < before.kWh)
        wrongOrder(`meterReadings[${i}].kWh`, kWh, `at least ${before.kWh}, as read before`);
    });
  },
};

function wrongOrder(path: string, found: unknown, expected: string): never {
  throw new BadInput({ code: "wrong-order", path, found: shown(found), expected });
}
