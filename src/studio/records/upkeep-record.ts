import { type Static, Type } from "typebox";
import { BadInput } from "../../measures/bad-input.ts";
import { OneOf } from "../../measures/schema.ts";
import { Id, Moment, stamps, Words } from "./fields.ts";
import type { RecordKind } from "./record-kind.ts";

/** What is done to keep a kiln in repair. */
export const UPKEEP_WORK = [
  "element resistance",
  "elements changed",
  "relay changed",
  "probe changed",
  "shelf washed",
  "shelf turned",
  "shelf cracked",
  "other",
] as const;
export type UpkeepWork = (typeof UPKEEP_WORK)[number];

/** One entry of a kiln's book of upkeep. */
export const UpkeepRecordSchema = Type.Object(
  {
    id: Id("The entry."),
    kilnId: Id("The kiln."),
    at: Moment("When it was done."),
    what: OneOf(UPKEEP_WORK, "What was done."),
    ohms: Type.Optional(
      Type.Array(Type.Number({ minimum: 0.5, maximum: 10000 }), {
        minItems: 1,
        maxItems: 40,
        description: "Each circuit's resistance, measured cold and cut off from the supply; always in one order.",
      }),
    ),
    count: Type.Optional(Type.Integer({ minimum: 1, maximum: 1000, description: "How many; one where left out." })),
    note: Words("Anything else."),
    ...stamps,
  },
  { additionalProperties: false },
);
export type UpkeepRecord = Static<typeof UpkeepRecordSchema>;

export const UPKEEP: RecordKind<typeof UpkeepRecordSchema> = {
  name: "upkeep",
  one: "upkeep entry",
  schema: UpkeepRecordSchema,
  refersTo: { kilnId: "kilns" },
  versioned: false,
  check: ({ what, ohms }) => {
    if (what !== "element resistance" || ohms !== undefined) return;
    const expected = "the resistance of each circuit, in ohms";
    throw new BadInput({ code: "missing-field", path: "ohms", found: "nothing", expected });
  },
};
