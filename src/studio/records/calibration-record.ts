import { type Static, Type } from "typebox";
import { CalibrationSchema, readCalibration } from "../../firing/calibration/calibration-file.ts";
import { Name } from "../../measures/schema.ts";
import { checkId, Id, Moment, stamps, Words } from "./fields.ts";
import { type RecordKind, within } from "./record-kind.ts";

const closed = { additionalProperties: false } as const;
const Any = (description: string) => Type.Number({ minimum: -1e9, maximum: 1e9, description });

/** A usual programme foretold with a kiln, and how unsure that is (one standard deviation). */
const ForetoldWithSchema = Type.Object(
  {
    kWh: Any("What it draws."),
    shelvesC: Type.Array(Any("Heat work of a level, equivalent °C."), { maxItems: 50 }),
    coolHours: Any("From shut-off to 95 °C."),
    finished: Type.Boolean({ description: "False where the kiln was too weak for it." }),
    unsure: Type.Object(
      { kWhPercent: Any("Of the energy."), shelfC: Any("Of the least sure shelf."), coolPercent: Any("Of cooling.") },
      closed,
    ),
  },
  closed,
);

/** What a calibration says of itself beyond its values. */
export const LearnedSchema = Type.Object(
  {
    fit: Any("Root mean square of all differences in sigmas: about 1 where the model fits as it should."),
    settled: Type.Boolean({ description: "False where the search ran out of rounds." }),
    misfits: Type.Array(
      Type.Object(
        {
          kind: Name("The kind of evidence."),
          unit: Name("Its unit."),
          count: Type.Integer({ minimum: 0 }),
          before: Any("Root mean square before."),
          after: Any("And after."),
        },
        closed,
      ),
      { maxItems: 20 },
    ),
    before: ForetoldWithSchema,
    after: ForetoldWithSchema,
    next: Type.Array(
      Type.Object(
        { kind: Name("Evidence that is missing."), how: Words("How to get it.", 1000), surerBy: Any("Share, 0 to 1.") },
        closed,
      ),
      { maxItems: 20 },
    ),
    notes: Type.Array(Words("In a sentence.", 2000), { maxItems: 50 }),
  },
  closed,
);
export type Learned = Static<typeof LearnedSchema>;

/** What some firings of a kiln taught. The newest of a kiln is what it is foretold with. */
export const CalibrationRecordSchema = Type.Object(
  {
    id: Id("The calibration."),
    kilnId: Id("The kiln."),
    at: Moment("When it was made."),
    firingIds: Type.Array(Id("A firing it rests on; it may be gone since."), { maxItems: 1000 }),
    calibration: CalibrationSchema,
    learned: Type.Optional(LearnedSchema),
    ...stamps,
  },
  closed,
);
export type CalibrationRecord = Static<typeof CalibrationRecordSchema>;

export const CALIBRATIONS: RecordKind<typeof CalibrationRecordSchema> = {
  name: "calibrations",
  one: "calibration",
  schema: CalibrationRecordSchema,
  refersTo: { kilnId: "kilns" },
  versioned: false,
  check: ({ firingIds, calibration }) => {
    within("calibration", () => readCalibration(calibration));
    firingIds.forEach((id, i) => {
      checkId(id, `firingIds[${i}]`);
    });
  },
};
