import { type Static, Type } from "typebox";
import { CONES } from "../../firing/cones/cone.ts";
import { Name, OneOf } from "../../measures/schema.ts";
import { BECOMES } from "./becomes.ts";
import { FAULTS, GRADES } from "./faults.ts";
import { Id, Moment, orNull, Words } from "./fields.ts";

// Parts of a firing's record that came with watching and unloading it. All of them may be missing: firings were kept
// before there were any.

const closed = { additionalProperties: false } as const;
const level = Type.Integer({ minimum: 0, maximum: 49, description: "Which level of the plan, from 0 at the bottom." });
const TempC = (description: string) => Type.Number({ minimum: -60, maximum: 2500, description });
const Hours = (description: string) => Type.Number({ minimum: 0, maximum: 1000, description });

/** What was foretold when the firing was prepared. It stays as it was, whatever is learned later. */
export const ForetoldRecordSchema = Type.Object(
  {
    hours: Hours("From the start until the kiln shuts off."),
    kWh: Type.Number({ minimum: 0, maximum: 1e5, description: "What it draws." }),
    peakC: TempC("The probe's highest."),
    cone: orNull(OneOf(CONES, "The cone it was held against.")),
    levels: Type.Array(
      Type.Object(
        {
          level,
          peakC: TempC("The level's highest."),
          ladder: Type.Number({ minimum: -10, maximum: 60, description: "Its place on the cone ladder." }),
          offsetC: Type.Number({ minimum: -500, maximum: 500, description: "Heat work over the probe's, in °C." }),
        },
        closed,
      ),
      { maxItems: 50 },
    ),
    coolHours: Type.Unsafe<Record<string, number | null>>(
      Type.Object(
        {},
        {
          additionalProperties: orNull(Type.Number({ minimum: 0, maximum: 1000 })),
          description: "Hours from shut-off until all is under a temperature, by it; null where it takes over a week.",
        },
      ),
    ),
    curve: Type.Array(Type.Tuple([Type.Number({ minimum: 0 }), TempC("At the probe.")]), {
      maxItems: 5000,
      description: "The probe's curve, [minutes, °C].",
    }),
    cost: orNull(Type.Number({ minimum: 0, maximum: 1e7, description: "By the tariff, where there was one." })),
    kWhEachHour: Type.Optional(
      Type.Array(Type.Number({ minimum: 0, maximum: 1e4 }), {
        maxItems: 1000,
        description: "What it draws in each hour from the start: to price it at another start.",
      }),
    ),
    assumed: Type.Optional(
      Type.Array(Words("What was taken for granted.", 400), { maxItems: 50, description: "In sentences." }),
    ),
    calibrationId: Type.Optional(Id("What was known of the kiln; it may be gone since. Left out: as described.")),
  },
  closed,
);
export type ForetoldRecord = Static<typeof ForetoldRecordSchema>;

/** One thing to see to before the switch, and when she did. */
export const CheckSchema = Type.Object(
  { item: Name("What is seen to (src/studio/firings/checklist.ts)."), at: orNull(Moment("When it was.")) },
  closed,
);
export type Check = Static<typeof CheckSchema>;

/** A witness cone, as it was seen. */
export const SeenConeSchema = Type.Object(
  {
    level,
    cone: OneOf(CONES, "Its number."),
    bendDeg: Type.Number({ minimum: 0, maximum: 180, description: "From upright: 8 as it was set, 90 down." }),
    place: Words("Where on the shelf; may be empty.", 120),
  },
  closed,
);
export type SeenCone = Static<typeof SeenConeSchema>;

/** How one piece came out. */
export const OutcomeSchema = Type.Object(
  {
    level,
    placement: Type.Integer({ minimum: 0, maximum: 1999, description: "Which of that level's placements, from 0." }),
    grade: OneOf(GRADES, "How it came out."),
    faults: Type.Array(OneOf(FAULTS, "A fault."), { maxItems: FAULTS.length }),
    note: Words("What she saw."),
    at: Moment("When she looked."),
    becomes: Type.Optional(OneOf(BECOMES, "What it becomes, where she said so.")),
  },
  closed,
);
export type Outcome = Static<typeof OutcomeSchema>;

/** A piece whose judgement was taken back. */
export const TakenBackSchema = Type.Object(
  { level, placement: OutcomeSchema.properties.placement, at: Moment("When it was.") },
  closed,
);

/** Something that was noticed while it fired. */
export const FiringNoticeSchema = Type.Object(
  {
    id: Id("The notice."),
    kind: Name("What kind of trouble."),
    since: Moment("When it began."),
    until: orNull(Moment("When it was over.")),
    message: Words("In words.", 1000),
  },
  closed,
);
export type FiringNotice = Static<typeof FiringNoticeSchema>;
