import { Type } from "typebox";
import { OneOf } from "../../measures/schema.ts";
import { becameInWords, moveOn } from "../firings/move-on.ts";
import { pieceBecomes } from "../firings/piece-becomes.ts";
import { BECOMES } from "../records/becomes.ts";
import { Id } from "../records/fields.ts";
import { LOADS } from "../records/load-record.ts";
import { command, input } from "./inputs.ts";
import { unpackedAlready } from "./judge-pieces.ts";
import { changeKept, kept } from "./keeping.ts";

/** Unpacks a load whose firing nobody judged piece by piece: all its batches move on, or nothing happens. */
export const unpackLoad = command({
  name: "unpack-load",
  schema: input({
    id: Id("The load."),
    version: Type.Integer({ minimum: 1, description: "The version it was looked at in." }),
    batches: Type.Optional(
      Type.Array(input({ wareId: Id("The batch."), becomes: OneOf(BECOMES, "What its pieces in this load became.") }), {
        maxItems: 2000,
        description: "Only those that became something else than usual.",
      }),
    ),
  }),
  scope: ({ id }) => `load:${id}`,
  run: async (records, { id, version, batches = [] }, context) => {
    const load = await kept(records.loads, LOADS, id);
    if (load.state === "unpacked") throw unpackedAlready(load);
    const said = new Map(batches.map(({ wareId, becomes }) => [wareId, becomes]));
    const became = await moveOn(
      records,
      load,
      (_, batch) =>
        said.get(batch.id) ?? pieceBecomes({ grade: "good", stage: batch.stage, firingKind: batch.firingKind }),
      context,
    );
    await changeKept(records.loads, load, { ...load, state: "unpacked", version }, context.now);
    return `Unpacked ${load.name}: ${becameInWords(became)}`;
  },
});
