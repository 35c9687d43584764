import { Type } from "typebox";
import { BadInput } from "../../measures/bad-input.ts";
import { keepStanding } from "../loads/keep-standing.ts";
import { loadRequestOf } from "../loads/load-request-of.ts";
import { carried, followPieces } from "../loads/places.ts";
import { alternativesId, type PromisedTo, promisedPieces, waitingOf } from "../queries/promised.ts";
import { Id } from "../records/fields.ts";
import { KILNS, KilnRecordSchema } from "../records/kiln-record.ts";
import { LOADS, type LoadRecord, LoadRecordSchema } from "../records/load-record.ts";
import { recordPath, unknownRecord } from "../records/refusals.ts";
import type { StudioRecords } from "../records/store.ts";
import { WARE, type WareRecord } from "../records/ware-record.ts";
import { countOf, inSentences } from "./in-words.ts";
import { command, input, NewId } from "./inputs.ts";
import { begun, changeKept, kept } from "./keeping.ts";

const chosen = {
  wareIds: Type.Array(Id("A batch."), { maxItems: 2000 }),
  counts: Type.Optional(
    Type.Unsafe<Record<string, number>>(
      Type.Object(
        {},
        {
          additionalProperties: Type.Integer({ minimum: 1, maximum: 2000 }),
          description: "How many of a batch, by its id; what still waits of it where it is not named.",
        },
      ),
    ),
  ),
};

/** Makes a load of waiting ware for one kiln. Nothing is planned yet. */
export const makeLoad = command({
  name: "make-load",
  schema: input({
    id: NewId,
    kilnId: Id("The kiln."),
    name: LoadRecordSchema.properties.name,
    ...chosen,
    rules: Type.Optional(KilnRecordSchema.properties.rules),
  }),
  scope: () => "loads",
  run: async (records, { id, kilnId, name, wareIds, rules, counts = {} }, context) => {
    const kiln = await kept(records.kilns, KILNS, kilnId);
    const ware: WareRecord[] = [];
    for (const wareId of new Set(wareIds)) ware.push(await kept(records.ware, WARE, wareId));
    const promised = promisedPieces(await records.loads.list());
    const made = loadRequestOf(kiln, ware, {
      counts: countsOf(ware, counts, promised),
      glazes: await records.glazes.list(),
      rules,
    });
    const { request, sources } = made;
    const nothingYet = { state: "planned" as const, plan: null, pins: [], ticks: [], version: 1 };
    await records.loads.add({ ...begun(id, context), kilnId, name, request, sources, ...nothingYet });
    return inSentences(`Made the load ${name}`, ...made.notes);
  },
});

/** Chooses anew what a load is made of. What is still wanted stays where it stands. */
export const chooseLoadWare = command({
  name: "choose-load-ware",
  schema: input({
    id: Id("The load."),
    version: Type.Integer({ minimum: 1, description: "The version the choice was made from." }),
    ...chosen,
  }),
  scope: ({ id }) => `load:${id}`,
  run: async (records, { id, version, wareIds, counts = {} }, { now }) => {
    const before = await kept(records.loads, LOADS, id);
    const ware: WareRecord[] = [];
    const gone: string[] = [];
    for (const wareId of new Set(wareIds)) {
      const batch = await records.ware.get(wareId);
      if (batch) ware.push(batch);
      else if (before.sources.some((source) => source.wareId === wareId)) gone.push(wareId);
      else throw unknownRecord(WARE, wareId);
    }
    const { request, sources, notes } = await requestAnew(records, before, ware, gone, counts);
    const plan = keepStanding(before, request);
    const after = { ...before, ...carried(before, followPieces(before.plan, plan)), request, sources, plan, version };
    await changeKept(records.loads, before, after, now);
    return inSentences(`Chose ${countOf(request.ware.length, "batch")} for ${before.name}`, ...notes);
  },
});

async function requestAnew(
  records: StudioRecords,
  load: LoadRecord,
  ware: readonly WareRecord[],
  gone: readonly string[],
  counts: Readonly<Record<string, number>>,
) {
  const { kiln, furniture, rules } = load.request;
  const taken = new Map(load.sources.map((source) => [source.wareId, source.ware]));
  const asked = new Map(load.request.ware.map((each) => [each.name, each]));
  const before = Object.fromEntries(
    ware.flatMap((batch) => {
      const there = asked.get(taken.get(batch.id) ?? "");
      return there ? [[batch.id, Math.min(there.count, batch.ware.count)]] : [];
    }),
  );
  const others = (await records.loads.list()).filter((each) => alternativesId(each) !== alternativesId(load));
  const anew = loadRequestOf({ kiln, furniture, rules }, ware, {
    counts: { ...before, ...countsOf(ware, counts, promisedPieces(others), new Set(Object.keys(before))) },
    glazes: await records.glazes.list(),
    taken,
  });
  // A batch that is gone from her shelf stays in the load as the load has it.
  const stays = gone.flatMap((wareId) => {
    const there = asked.get(taken.get(wareId) ?? "");
    return there
      ? [{ ware: { ...there, count: counts[wareId] ?? there.count }, source: { ware: there.name, wareId } }]
      : [];
  });
  return {
    request: { ...anew.request, ware: [...anew.request.ware, ...stays.map((each) => each.ware)] },
    sources: [...anew.sources, ...stays.map((each) => each.source)],
    notes: anew.notes,
  };
}

/**
 * How many of each batch go: as many as are asked for, else what waits of it.
 *
 * @param known batches whose number is known already
 */
function countsOf(
  ware: readonly WareRecord[],
  asked: Readonly<Record<string, number>>,
  promised: ReadonlyMap<string, readonly PromisedTo[]>,
  known: ReadonlySet<string> = new Set(),
): Record<string, number> {
  const counts: Record<string, number> = {};
  for (const batch of ware) {
    const { id, ware: piece } = batch;
    const wish = asked[id];
    if (wish !== undefined && wish > piece.count) throw tooMany(batch, wish);
    if (wish === undefined && known.has(id)) continue;
    const { waits, promised: elsewhere } = waitingOf(piece.count, promised.get(id));
    if (wish === undefined && waits === 0) throw allPromised(batch, elsewhere);
    counts[id] = wish ?? waits;
  }
  return counts;
}

const tooMany = ({ id, ware }: WareRecord, wish: number): BadInput =>
  new BadInput({
    code: "out-of-range",
    path: `counts.${id}`,
    found: `${wish} of ${ware.name}`,
    expected: `at most ${ware.count}, which is all there are`,
  });

const allPromised = (batch: WareRecord, elsewhere: readonly PromisedTo[]): BadInput =>
  new BadInput({
    code: "none-waits",
    path: recordPath(WARE, batch.id),
    found: `no ${batch.ware.name} that waits: all stand in ${elsewhere.map(({ loadName }) => loadName).join(" and ")}`,
    expected: "a number to take all the same, or another batch",
  });
