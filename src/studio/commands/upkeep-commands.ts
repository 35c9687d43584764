import { Type } from "typebox";
import { Id } from "../records/fields.ts";
import { KILNS } from "../records/kiln-record.ts";
import { LOGGERS, LoggerRecordSchema } from "../records/logger-record.ts";
import { UPKEEP, UpkeepRecordSchema, type UpkeepWork } from "../records/upkeep-record.ts";
import { countOf } from "./in-words.ts";
import { command, input, NewId } from "./inputs.ts";
import { begun, changeKept, given, kept } from "./keeping.ts";

const { kilnId, at, what, ohms, count, note } = UpkeepRecordSchema.properties;
const scope = () => "kilns";

const noteUpkeep = command({
  name: "note-upkeep",
  schema: input({
    ...{ id: NewId, kilnId, at, what },
    ...{ ohms: Type.Optional(ohms), count: Type.Optional(count), note: Type.Optional(note) },
  }),
  scope,
  run: async (records, { id, note: words = "", ...entry }, context) => {
    const kiln = await kept(records.kilns, KILNS, entry.kilnId);
    await records.upkeep.add({ ...given(entry), note: words, ...begun(id, context) });
    return `${inWords(entry.what, entry.count)} in ${kiln.kiln.name}`;
  },
});

const changeUpkeep = command({
  name: "change-upkeep",
  schema: input({
    id: Id("The entry."),
    ...{ at: Type.Optional(at), ohms: Type.Optional(ohms), count: Type.Optional(count), note: Type.Optional(note) },
  }),
  scope,
  run: async (records, { id, ...change }, { now }) => {
    const before = await kept(records.upkeep, UPKEEP, id);
    await changeKept(records.upkeep, before, { ...before, ...given(change) }, now);
    return `Changed in the book of upkeep: ${before.what}`;
  },
});

const removeUpkeep = command({
  name: "remove-upkeep",
  schema: input({ id: Id("The entry.") }),
  scope,
  run: async (records, { id }) => {
    const before = await kept(records.upkeep, UPKEEP, id);
    await records.upkeep.remove(id);
    return `Took out of the book of upkeep: ${before.what}`;
  },
});

function inWords(work: UpkeepWork, many = 1): string {
  if (work.startsWith("shelf ")) {
    const shelves = countOf(many, "shelf").replace("shelfs", "shelves");
    return work === "shelf cracked"
      ? `${shelves} cracked`
      : `${work === "shelf washed" ? "Washed" : "Turned"} ${shelves}`;
  }
  if (work === "element resistance") return "Measured the elements";
  if (work === "other") return "Noted some upkeep";
  return `Changed the ${work.replace(" changed", "")}`;
}

/** The token itself is made and told once by whoever adds the logger; only its SHA-256 comes here. */
const addLogger = command({
  name: "add-logger",
  schema: input({
    id: NewId,
    kilnId: LoggerRecordSchema.properties.kilnId,
    probe: LoggerRecordSchema.properties.probe,
    name: LoggerRecordSchema.properties.name,
    tokenHash: LoggerRecordSchema.properties.tokenHash,
  }),
  scope,
  run: async (records, { id, ...logger }, context) => {
    const kiln = await kept(records.kilns, KILNS, logger.kilnId);
    await records.loggers.add({ ...logger, ...begun(id, context) });
    return `Lets ${logger.name} tell the temperatures of ${kiln.kiln.name}`;
  },
});

const removeLogger = command({
  name: "remove-logger",
  schema: input({ id: Id("The logger.") }),
  scope,
  run: async (records, { id }) => {
    const before = await kept(records.loggers, LOGGERS, id);
    await records.loggers.remove(id);
    return `Listens to ${before.name} no more`;
  },
});

export const UPKEEP_COMMANDS = [noteUpkeep, changeUpkeep, removeUpkeep, addLogger, removeLogger];
