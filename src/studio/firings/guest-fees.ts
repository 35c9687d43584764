import type { LoadRecord } from "../records/load-record.ts";
import type { GuestFee } from "../records/studio-settings.ts";
import type { WareRecord } from "../records/ware-record.ts";
import { pieceLitres } from "./piece-litres.ts";

/** What one guest owes for one firing, in hundredths. */
export interface GuestFees {
  readonly guest: string;
  readonly lines: readonly {
    readonly ware: string;
    readonly count: number;
    readonly litres: number;
    readonly cents: number;
  }[];
  readonly litres: number;
  /** For the firing itself, once. */
  readonly firingCents: number;
  /** The lines and the firing together. */
  readonly cents: number;
}

/** Whose ware a batch is, where her own note begins "guest: Name"; else null. */
export const guestOf = ({ ownerNote }: Pick<WareRecord, "ownerNote">): string | null =>
  /^\s*guest:\s*([^;,\n]{1,80})/i.exec(ownerNote)?.[1]?.trim() || null;

/**
 * A firing's fee sheet: what stood in its load of each guest's, by the litre, and a fee for the firing. Losses are paid
 * for too: the space was taken.
 *
 * @param guests whose each batch is, by the batch's id (`guestOf` reads it off her notes)
 */
export function guestFees(load: LoadRecord, fee: GuestFee, guests: ReadonlyMap<string, string>): GuestFees[] {
  const wares = new Map(load.request.ware.map((each) => [each.name, each]));
  const guestBy = new Map(load.sources.map(({ ware, wareId }) => [ware, guests.get(wareId)]));
  const sheets = new Map<string, Map<string, { count: number; litres: number }>>();
  for (const { placements } of load.plan?.levels ?? []) {
    for (const { ware } of placements) {
      const [guest, piece] = [guestBy.get(ware), wares.get(ware)];
      if (guest === undefined || piece === undefined) continue;
      const sheet = sheets.get(guest) ?? new Map<string, { count: number; litres: number }>();
      const { count, litres } = sheet.get(ware) ?? { count: 0, litres: 0 };
      sheet.set(ware, { count: count + 1, litres: litres + pieceLitres(piece, load.request.rules) });
      sheets.set(guest, sheet);
    }
  }
  return [...sheets]
    .map(([guest, sheet]): GuestFees => {
      const lines = [...sheet].map(([ware, { count, litres }]) => ({
        ...{ ware, count, litres },
        cents: Math.round(100 * litres * fee.perLitre),
      }));
      const firingCents = Math.round(100 * fee.perFiring);
      return {
        ...{ guest, lines, firingCents },
        litres: lines.reduce((sum, each) => sum + each.litres, 0),
        cents: lines.reduce((sum, each) => sum + each.cents, firingCents),
      };
    })
    .sort((a, b) => (a.guest < b.guest ? -1 : 1));
}
