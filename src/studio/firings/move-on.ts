import type { CommandContext } from "../commands/command.ts";
import type { Place } from "../loads/places.ts";
import { BECOMES, type Becomes } from "../records/becomes.ts";
import type { LoadRecord } from "../records/load-record.ts";
import type { StudioRecords } from "../records/store.ts";
import type { WareRecord } from "../records/ware-record.ts";
import { becomeBatch } from "./piece-becomes.ts";

/** How many pieces became what. */
export type Became = Readonly<Record<Becomes, number>>;

const NEW_BATCHES = ["bisque", "finished", "second"] as const;

/**
 * Moves a load's pieces on to what they became: a batch that went in whole is changed, of one that went in by half the
 * fired ones become a batch of their own, lost ones leave the count. Batches that are gone since are left alone.
 *
 * @param becomesAt what the piece at a place of the plan became
 */
export async function moveOn(
  records: StudioRecords,
  load: LoadRecord,
  becomesAt: (place: Place, batch: WareRecord) => Becomes,
  context: CommandContext,
): Promise<Became> {
  const all: Record<Becomes, number> = { bisque: 0, finished: 0, second: 0, again: 0, lost: 0 };
  const wareIds = new Map(load.sources.map(({ ware, wareId }) => [ware, wareId]));
  const byBatch = new Map<string, Place[]>();
  load.plan?.levels.forEach(({ placements }, level) => {
    placements.forEach(({ ware }, placement) => {
      const id = wareIds.get(ware);
      if (id !== undefined) byBatch.set(id, [...(byBatch.get(id) ?? []), { level, placement }]);
    });
  });
  for (const [id, places] of byBatch) {
    const batch = await records.ware.get(id);
    if (batch === null) continue;
    const became = { bisque: 0, finished: 0, second: 0, again: 0, lost: 0 };
    // Never more than the batch has: some may have been taken out of its count by hand.
    for (const place of places.slice(0, batch.ware.count)) became[becomesAt(place, batch)]++;
    for (const each of BECOMES) all[each] += became[each];
    await applyTo(records, batch, became, context);
  }
  return all;
}

async function applyTo(
  records: StudioRecords,
  batch: WareRecord,
  became: Became,
  { now, newId }: CommandContext,
): Promise<void> {
  const left = NEW_BATCHES.reduce((count, each) => count - became[each], batch.ware.count - became.lost);
  const targets = NEW_BATCHES.filter((each) => became[each] > 0);
  const [inPlace, ...apart] = left > 0 ? [null, ...targets] : targets;
  if (left > 0) {
    if (left < batch.ware.count) {
      await records.ware.change({ ...batch, ware: { ...batch.ware, count: left }, changedAt: now });
    }
  } else if (inPlace) {
    await records.ware.change({ ...becomeBatch(batch, inPlace, became[inPlace]), changedAt: now });
  } else {
    await records.ware.remove(batch.id);
  }
  for (const each of apart) {
    if (each === null) continue;
    const id = newId();
    await records.ware.add({ ...becomeBatch(batch, each, became[each]), id, createdAt: now, changedAt: now });
  }
}

/** What pieces became, behind their number. */
export const BECAME_WORDS: Readonly<Record<Becomes, string>> = {
  bisque: "to be glazed",
  finished: "finished",
  second: "finished as seconds",
  again: "to be fired again",
  lost: "lost",
};

/** "14 finished, 1 lost". */
export function becameInWords(became: Became): string {
  const said = BECOMES.flatMap((each) => (became[each] > 0 ? [`${became[each]} ${BECAME_WORDS[each]}`] : []));
  return said.length === 0 ? "nothing of it is still kept" : said.join(", ");
}
