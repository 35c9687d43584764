import { type Static, type TObject, type TProperties, Type } from "typebox";
import { Id } from "../records/fields.ts";
import type { StudioCommand } from "./command.ts";

/** The shape of a command's input: these fields and no others. */
export const input = <Fields extends TProperties>(fields: Fields) =>
  Type.Object(fields, { additionalProperties: false });

/** The id of a record to be made; the studio makes one where it is left out. */
export const NewId = Type.Optional(Id("The id it is to have; made where left out."));

/** Whose ids. */
export const Ids = (description: string) => Type.Array(Id(description), { minItems: 1, maxItems: 20_000 });

/** A command whose parts know one another's types. */
export const command = <Schema extends TObject>({ name, schema, ...parts }: StudioCommand<Schema>): StudioCommand => ({
  name,
  schema,
  // From here on the schema is only asked at run time: `doCommand` holds every input to it first.
  scope: (value) => parts.scope(value as Static<Schema>),
  ...(parts.beforehand && {
    beforehand: (records, value) => parts.beforehand?.(records, value as Static<Schema>) ?? nothingToReckon(),
  }),
  run: (records, value, context, found) => parts.run(records, value as Static<Schema>, context, found),
});

const nothingToReckon = async () => () => undefined;
