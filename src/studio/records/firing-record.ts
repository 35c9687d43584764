import { type Static, Type } from "typebox";
import { ProgrammeSchema, readProgramme } from "../../firing/programme/programme.ts";
import { BadInput, shown } from "../../measures/bad-input.ts";
import { Name, OneOf } from "../../measures/schema.ts";
import { checkId, checkKeepable, checkMoment, Id, Moment, orNull, stamps } from "./fields.ts";
import {
  CheckSchema,
  FiringNoticeSchema,
  ForetoldRecordSchema,
  OutcomeSchema,
  SeenConeSchema,
  TakenBackSchema,
} from "./firing-parts.ts";
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
    plannedStartAt: Type.Optional(Moment("When it is to be switched on.")),
    shutOffAt: Type.Optional(Moment("When the elements went off for good.")),
    foretold: Type.Optional(ForetoldRecordSchema),
    checklist: Type.Optional(Type.Array(CheckSchema, { maxItems: 100 })),
    cones: Type.Optional(Type.Array(SeenConeSchema, { maxItems: 500, description: "Witness cones as seen." })),
    outcomes: Type.Optional(Type.Array(OutcomeSchema, { maxItems: 2000, description: "One a piece at most." })),
    takenBack: Type.Optional(
      Type.Array(TakenBackSchema, {
        maxItems: 2000,
        description: "Pieces whose judgement was taken back, and when: an older one that comes late counts no more.",
      }),
    ),
    notices: Type.Optional(Type.Array(FiringNoticeSchema, { maxItems: 1000 })),
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
  check: (firing) => {
    const { programme } = firing;
    if (programme !== null) within("programme", () => readProgramme(programme));
    checkCourse(firing);
    checkMeter(firing);
    checkParts(firing);
  },
};

/** Started, shut off, over: in that order. */
function checkCourse({ state, startedAt, endedAt, shutOffAt }: FiringRecord): void {
  if (state !== "planned" && startedAt === null) {
    const expected = `the moment it was switched on, for it is ${state}`;
    throw new BadInput({ code: "missing-field", path: "startedAt", found: "null", expected });
  }
  if (endedAt !== null && (startedAt === null || endedAt < startedAt)) {
    throw new BadInput({ code: "wrong-order", path: "endedAt", found: endedAt, expected: "no end before the start" });
  }
  if (shutOffAt === undefined) return;
  if (startedAt === null || shutOffAt < startedAt) wrongOrder("shutOffAt", shutOffAt, "no shut-off before the start");
  if (endedAt !== null && shutOffAt > endedAt) wrongOrder("shutOffAt", shutOffAt, "no shut-off after the end");
}

function checkMeter({ meterReadings }: FiringRecord): void {
  meterReadings.forEach(({ at, kWh }, i) => {
    checkMoment(at, `meterReadings[${i}].at`);
    const before = meterReadings[i - 1];
    if (before && at < before.at) wrongOrder(`meterReadings[${i}].at`, at, "readings in order of time");
    if (before && kWh < before.kWh)
      wrongOrder(`meterReadings[${i}].kWh`, kWh, `at least ${before.kWh}, as read before`);
  });
}

function checkParts(firing: FiringRecord): void {
  const { checklist = [], cones = [], outcomes = [], takenBack = [], notices = [], foretold } = firing;
  checklist.forEach(({ item, at }, i) => {
    checkKeepable(item, `checklist[${i}].item`);
    if (at !== null) checkMoment(at, `checklist[${i}].at`);
  });
  cones.forEach(({ place }, i) => {
    checkKeepable(place, `cones[${i}].place`);
  });
  const seen = new Set<string>();
  outcomes.forEach(({ level, placement, at, note }, i) => {
    checkMoment(at, `outcomes[${i}].at`);
    checkKeepable(note, `outcomes[${i}].note`);
    const place = `placement ${placement} of level ${level}`;
    if (seen.has(place)) {
      const expected = "one outcome a piece";
      throw new BadInput({ code: "said-twice", path: `outcomes[${i}]`, found: `${place} again`, expected });
    }
    seen.add(place);
  });
  takenBack.forEach(({ at }, i) => {
    checkMoment(at, `takenBack[${i}].at`);
  });
  notices.forEach(({ id, kind, since, until, message }, i) => {
    checkId(id, `notices[${i}].id`);
    checkKeepable(kind, `notices[${i}].kind`);
    checkKeepable(message, `notices[${i}].message`);
    checkMoment(since, `notices[${i}].since`);
    if (until !== null) checkMoment(until, `notices[${i}].until`);
  });
  if (foretold?.calibrationId !== undefined) checkId(foretold.calibrationId, "foretold.calibrationId");
}

function wrongOrder(path: string, found: unknown, expected: string): never {
  throw new BadInput({ code: "wrong-order", path, found: shown(found), expected });
}
