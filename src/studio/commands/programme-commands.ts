import { Type } from "typebox";
import { Id } from "../records/fields.ts";
import { PROGRAMMES, ProgrammeRecordSchema } from "../records/programme-record.ts";
import { command, input, NewId } from "./inputs.ts";
import { begun, changeKept, given, kept } from "./keeping.ts";

const { programme, note } = ProgrammeRecordSchema.properties;
const scope = () => "firings";

const addProgramme = command({
  name: "add-programme",
  schema: input({ id: NewId, programme, note: Type.Optional(note) }),
  scope,
  run: async (records, { id, programme: written, note: words = "" }, context) => {
    await records.programmes.add({ programme: written, note: words, ...begun(id, context) });
    return `Kept the programme ${written.name}`;
  },
});

const changeProgramme = command({
  name: "change-programme",
  schema: input({ id: Id("The programme."), programme: Type.Optional(programme), note: Type.Optional(note) }),
  scope,
  run: async (records, { id, ...change }, { now }) => {
    const before = await kept(records.programmes, PROGRAMMES, id);
    const after = await changeKept(records.programmes, before, { ...before, ...given(change) }, now);
    return `Changed the programme ${after.programme.name}`;
  },
});

const removeProgramme = command({
  name: "remove-programme",
  schema: input({ id: Id("The programme.") }),
  scope,
  run: async (records, { id }) => {
    const before = await kept(records.programmes, PROGRAMMES, id);
    await records.programmes.remove(id);
    return `Took out the programme ${before.programme.name}`;
  },
});

export const PROGRAMME_COMMANDS = [addProgramme, changeProgramme, removeProgramme];
