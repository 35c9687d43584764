import { type Static, Type } from "typebox";
import { CLAY_BODIES, ClayBodyRecordSchema, GLAZES, GlazeRecordSchema } from "../records/clay-and-glaze-records.ts";
import { Id } from "../records/fields.ts";
import { command, input, NewId } from "./inputs.ts";
import { begun, changeKept, given, kept } from "./keeping.ts";

const { name, cones, note } = ClayBodyRecordSchema.properties;
const { runs } = GlazeRecordSchema.properties;
const scope = () => "materials";

export const NewClayBodySchema = input({ id: NewId, name, cones, note });
/** A clay body that is to be written down. */
export type NewClayBody = Static<typeof NewClayBodySchema>;

export const NewGlazeSchema = input({ id: NewId, name, cones, runs, note });
/** A glaze that is to be written down. */
export type NewGlaze = Static<typeof NewGlazeSchema>;

const someOf = { name: Type.Optional(name), cones: Type.Optional(cones), note: Type.Optional(note) };

const addClayBody = command({
  name: "add-clay-body",
  schema: NewClayBodySchema,
  scope,
  run: async (records, { id, ...body }, context) => {
    await records.clayBodies.add({ ...body, ...begun(id, context) });
    return `Added the clay body ${body.name}`;
  },
});

const changeClayBody = command({
  name: "change-clay-body",
  schema: input({ id: Id("The clay body."), ...someOf }),
  scope,
  run: async (records, { id, ...change }, { now }) => {
    const before = await kept(records.clayBodies, CLAY_BODIES, id);
    const after = await changeKept(records.clayBodies, before, { ...before, ...given(change) }, now);
    return `Changed the clay body ${after.name}`;
  },
});

const removeClayBody = command({
  name: "remove-clay-body",
  schema: input({ id: Id("The clay body.") }),
  scope,
  run: async (records, { id }) => {
    const before = await kept(records.clayBodies, CLAY_BODIES, id);
    await records.clayBodies.remove(id);
    return `Took out the clay body ${before.name}`;
  },
});

const addGlaze = command({
  name: "add-glaze",
  schema: NewGlazeSchema,
  scope,
  run: async (records, { id, ...glaze }, context) => {
    await records.glazes.add({ ...glaze, ...begun(id, context) });
    return `Added the glaze ${glaze.name}`;
  },
});

const changeGlaze = command({
  name: "change-glaze",
  schema: input({ id: Id("The glaze."), ...someOf, runs: Type.Optional(runs) }),
  scope,
  run: async (records, { id, ...change }, { now }) => {
    const before = await kept(records.glazes, GLAZES, id);
    const after = await changeKept(records.glazes, before, { ...before, ...given(change) }, now);
    return `Changed the glaze ${after.name}`;
  },
});

const removeGlaze = command({
  name: "remove-glaze",
  schema: input({ id: Id("The glaze.") }),
  scope,
  run: async (records, { id }) => {
    const before = await kept(records.glazes, GLAZES, id);
    await records.glazes.remove(id);
    return `Took out the glaze ${before.name}`;
  },
});

export const MATERIAL_COMMANDS = [addClayBody, changeClayBody, removeClayBody, addGlaze, changeGlaze, removeGlaze];
