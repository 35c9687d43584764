import { Type } from "typebox";
import { LoadRequestSchema } from "../../loading/load-request.ts";
import { carried, followPieces } from "../loads/places.ts";
import { alternativesId } from "../queries/promised.ts";
import { Id, Words } from "../records/fields.ts";
import { LOADS, type LoadRecord, LoadRecordSchema, PinSchema } from "../records/load-record.ts";
import { command, input, NewId } from "./inputs.ts";
import { begun, changeKept, given, kept } from "./keeping.ts";
import { chooseLoadWare, makeLoad } from "./load-ware-commands.ts";
import { tickLoad } from "./tick-load.ts";

const { name, state, plan, pins } = LoadRecordSchema.properties;

const MoveSchema = input({ from: PinSchema, to: PinSchema });

const changeLoad = command({
  name: "change-load",
  schema: input({
    id: Id("The load."),
    version: Type.Integer({ minimum: 1, description: "The version the change was made from." }),
    name: Type.Optional(name),
    state: Type.Optional(state),
    plan: Type.Optional(plan),
    pins: Type.Optional(pins),
    request: Type.Optional(LoadRequestSchema),
    moves: Type.Optional(
      Type.Array(MoveSchema, {
        maxItems: 2000,
        description: "Pieces whose tick and pin go with them, from the plan as it was to the one given.",
      }),
    ),
    note: Type.Optional(Words("What was done, in words, for undo: moved the tall vase.", 200)),
  }),
  scope: ({ id }) => `load:${id}`,
  run: async (records, { id, version, moves, note, ...change }, { now }) => {
    const before = await kept(records.loads, LOADS, id);
    const follows = change.plan === undefined ? {} : carried(before, followPieces(before.plan, change.plan, moves));
    const after = { ...before, ...follows, ...given(change), version } as LoadRecord;
    if (change.request) {
      const names = new Set(change.request.ware.map((each) => each.name));
      after.sources = before.sources.filter(({ ware }) => names.has(ware));
    }
    await changeKept(records.loads, before, after, now);
    return `${inWords(note, change, after)}${tickLossInWords(before, after)}`;
  },
});

function inWords(note: string | undefined, change: { name?: unknown; state?: unknown }, after: LoadRecord): string {
  const said = note?.trim();
  if (said) return `${said[0]?.toUpperCase()}${said.slice(1)}`;
  if (change.state !== undefined) return `Marked ${after.name} as ${after.state}`;
  return change.name === undefined ? `Changed ${after.name}` : `Called the load ${after.name}`;
}

/** Pieces whose tick went, because they are to stand elsewhere now. */
export function tickLossInWords(before: LoadRecord, after: LoadRecord): string {
  const lost = before.ticks.length - after.ticks.length;
  if (lost <= 0) return "";
  return lost === 1 ? "; 1 piece is to be set down again" : `; ${lost} pieces are to be set down again`;
}

const copyLoad = command({
  name: "copy-load",
  schema: input({ id: Id("The load to copy."), name, newId: NewId }),
  scope: () => "loads",
  run: async (records, { id, name: called, newId }, context) => {
    const { takenBack: _, ...load } = await kept(records.loads, LOADS, id);
    const copy: LoadRecord = {
      ...load,
      ...begun(newId, context),
      name: called,
      alternativeOf: alternativesId(load),
      state: "planned",
      // What stands in the kiln stands there as the first one says.
      ticks: [],
      version: 1,
    };
    await records.loads.add(copy);
    return `Made ${called}, another way to load ${load.name}`;
  },
});

const removeLoad = command({
  name: "remove-load",
  schema: input({ id: Id("The load.") }),
  scope: () => "loads",
  run: async (records, { id }) => {
    const load = await kept(records.loads, LOADS, id);
    await records.loads.remove(id);
    return `Took out the load ${load.name}`;
  },
});

export const LOAD_COMMANDS = [makeLoad, changeLoad, chooseLoadWare, tickLoad, copyLoad, removeLoad];
