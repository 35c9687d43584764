import { type Static, Type } from "typebox";
import { Id } from "../records/fields.ts";
import { KILNS, KilnRecordSchema } from "../records/kiln-record.ts";
import { command, input, NewId } from "./inputs.ts";
import { begun, changeKept, given, kept } from "./keeping.ts";

const { kiln, furniture, rules } = KilnRecordSchema.properties;
const scope = () => "kilns";

export const NewKilnSchema = input({ id: NewId, kiln, furniture, rules });
/** A kiln that is to be written down. */
export type NewKiln = Static<typeof NewKilnSchema>;

const addKiln = command({
  name: "add-kiln",
  schema: NewKilnSchema,
  scope,
  run: async (records, { id, ...whole }, context) => {
    await records.kilns.add({ ...whole, ...begun(id, context) });
    return `Added the kiln ${whole.kiln.name}`;
  },
});

const changeKiln = command({
  name: "change-kiln",
  schema: input({
    id: Id("The kiln."),
    kiln: Type.Optional(kiln),
    furniture: Type.Optional(furniture),
    rules: Type.Optional(rules),
  }),
  scope,
  run: async (records, { id, ...change }, { now }) => {
    const before = await kept(records.kilns, KILNS, id);
    const after = await changeKept(records.kilns, before, { ...before, ...given(change) }, now);
    const what = change.kiln ? "" : change.furniture ? ": its furniture" : ": its clearances";
    return `Changed ${after.kiln.name}${what}`;
  },
});

const removeKiln = command({
  name: "remove-kiln",
  schema: input({ id: Id("The kiln.") }),
  scope,
  run: async (records, { id }) => {
    const before = await kept(records.kilns, KILNS, id);
    await records.kilns.remove(id);
    return `Took out the kiln ${before.kiln.name}`;
  },
});

export const KILN_COMMANDS = [addKiln, changeKiln, removeKiln];
