import { type Static, Type } from "typebox";
import { conePlace } from "../../firing/cones/cone.ts";
import type { ConeRange } from "../../firing/cones/cone-range.ts";
import { BadInput } from "../../measures/bad-input.ts";
import { Name } from "../../measures/schema.ts";
import { ConesSchema, Id, orNull, stamps, Words } from "./fields.ts";
import type { RecordKind } from "./record-kind.ts";

/** A clay body and the cones it matures at. */
export const ClayBodyRecordSchema = Type.Object(
  {
    id: Id("The clay body."),
    name: Name("What she calls it."),
    cones: orNull(ConesSchema),
    note: Words("Anything else: its colour, where it comes from."),
    ...stamps,
  },
  { additionalProperties: false },
);
export type ClayBodyRecord = Static<typeof ClayBodyRecordSchema>;

/** A glaze and the cones it melts as it should at. */
export const GlazeRecordSchema = Type.Object(
  {
    id: Id("The glaze."),
    name: Name("What she calls it."),
    cones: orNull(ConesSchema),
    runs: Type.Boolean({ description: "True where it runs, so that a piece wearing it should stand on a cookie." }),
    note: Words("Anything else: its recipe, how thick it goes on."),
    ...stamps,
  },
  { additionalProperties: false },
);
export type GlazeRecord = Static<typeof GlazeRecordSchema>;

const kept = { refersTo: {}, versioned: false } as const;

export const CLAY_BODIES: RecordKind<typeof ClayBodyRecordSchema> = {
  name: "clayBodies",
  one: "clay body",
  schema: ClayBodyRecordSchema,
  ...kept,
  check: ({ cones }) => checkCones(cones),
};

export const GLAZES: RecordKind<typeof GlazeRecordSchema> = {
  name: "glazes",
  one: "glaze",
  schema: GlazeRecordSchema,
  ...kept,
  check: ({ cones }) => checkCones(cones),
};

function checkCones(cones: ConeRange | null): void {
  if (cones === null || conePlace(cones.coolest) <= conePlace(cones.hottest)) return;
  throw new BadInput({
    code: "wrong-order",
    path: "cones",
    found: `cone ${cones.coolest} before cone ${cones.hottest}`,
    expected: "the cooler cone first",
  });
}
