import { type Static, Type } from "typebox";
import { FurnitureSchema } from "../../kiln/furniture.ts";
import { KilnSchema } from "../../kiln/kiln.ts";
import { RulesSchema } from "../../loading/clearance-rules.ts";
import { LOAD_REQUEST_FORMAT } from "../../loading/load-request.ts";
import { readLoadRequest } from "../../loading/read-load-request.ts";
import { Id, stamps } from "./fields.ts";
import type { RecordKind } from "./record-kind.ts";

/** A kiln of hers: its inside, its furniture and the clearances she keeps in it. */
export const KilnRecordSchema = Type.Object(
  { id: Id("The kiln."), kiln: KilnSchema, furniture: FurnitureSchema, rules: RulesSchema, ...stamps },
  { additionalProperties: false },
);
export type KilnRecord = Static<typeof KilnRecordSchema>;

export const KILNS: RecordKind<typeof KilnRecordSchema> = {
  name: "kilns",
  one: "kiln",
  schema: KilnRecordSchema,
  refersTo: {},
  versioned: false,
  // A kiln that no load request would take is not worth keeping.
  check: ({ kiln, furniture, rules }) => {
    readLoadRequest({ format: LOAD_REQUEST_FORMAT, kiln, furniture, rules, ware: [] });
  },
};
