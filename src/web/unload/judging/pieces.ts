import type { NumberedPiece, SheetLoad } from "../../../sheets/sheet-load.ts";
import { type Place, placeKey } from "../../../studio/loads/places.ts";
import type { LoadRecord } from "../../../studio/records/load-record.ts";
import type { WareRecord } from "../../../studio/records/ware-record.ts";

/** A piece that comes out of the kiln. */
export interface FiredPiece extends Place {
  /** Its place, as a key. */
  readonly key: string;
  /** Its number on its level, as on the printed sheet. */
  readonly number: number;
  readonly name: string;
  readonly glaze: string;
  readonly numbered: NumberedPiece;
  /** The batch it is of; null where that is gone since. */
  readonly batch: WareRecord | null;
}

/** The levels' indices in the order a kiln is unpacked: the top one first. */
export const unpackingOrder = ({ levels }: Pick<SheetLoad, "levels">): number[] =>
  [...levels].sort((a, b) => b.shelf.topMm - a.shelf.topMm || b.index - a.index).map(({ index }) => index);

/**
 * Every piece in the order in which hands take it out: the top level first, and on it the pieces the other way round than
 * they were set down, the nearest first, so that no arm reaches over ware. Common practice, no source.
 */
export function firedPieces(
  sheet: Pick<SheetLoad, "levels">,
  load: Pick<LoadRecord, "sources">,
  ware: readonly WareRecord[],
  glazeNames: ReadonlyMap<string, string>,
): FiredPiece[] {
  const batches = new Map(ware.map((batch) => [batch.id, batch]));
  const batchOf = new Map(load.sources.map((source) => [source.ware, batches.get(source.wareId) ?? null]));
  return unpackingOrder(sheet).flatMap((index) => {
    const level = sheet.levels.find((each) => each.index === index);
    return [...(level?.pieces ?? [])].reverse().map((numbered): FiredPiece => {
      const { placement, ware: kind } = numbered.piece;
      const place = { level: index, placement };
      const batch = batchOf.get(kind.name) ?? null;
      const recorded = batch?.glazeId == null ? undefined : glazeNames.get(batch.glazeId);
      return {
        ...place,
        ...{ key: placeKey(place), number: numbered.number, numbered, batch },
        ...{ name: kind.name, glaze: recorded ?? kind.glaze ?? "" },
      };
    });
  });
}
