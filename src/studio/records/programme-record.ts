import { type Static, Type } from "typebox";
import { ProgrammeSchema, readProgramme } from "../../firing/programme/programme.ts";
import { Id, stamps, Words } from "./fields.ts";
import { type RecordKind, within } from "./record-kind.ts";

/** A programme of her own, to fire by again. */
export const ProgrammeRecordSchema = Type.Object(
  { id: Id("The programme."), programme: ProgrammeSchema, note: Words("What it is good for."), ...stamps },
  { additionalProperties: false },
);
export type ProgrammeRecord = Static<typeof ProgrammeRecordSchema>;

export const PROGRAMMES: RecordKind<typeof ProgrammeRecordSchema> = {
  name: "programmes",
  one: "programme",
  schema: ProgrammeRecordSchema,
  refersTo: {},
  versioned: false,
  check: ({ programme }) => {
    within("programme", () => readProgramme(programme));
  },
};
