import type { GuestFee } from "../../../studio/records/studio-settings.ts";

/** Prices while they are typed. */
export interface PriceDraft {
  readonly elementSetPrice: number | null;
  readonly elementLifeFirings: number | null;
  readonly shelfPrice: number | null;
  readonly shelfLifeFirings: number | null;
  readonly perLitre: number | null;
  readonly perFiring: number | null;
}

/** What `change-settings` takes: null takes a price out. */
export type PriceChange = Partial<Omit<PriceDraft, "perLitre" | "perFiring">> & { readonly guestFee?: GuestFee | null };

/** The change typed prices make, or in words what is missing of a pair. */
export function readPrices(
  of: "wear" | "fee",
  draft: PriceDraft,
): { readonly change: PriceChange } | { readonly missing: string } {
  const { elementSetPrice, elementLifeFirings, shelfPrice, shelfLifeFirings, perLitre, perFiring } = draft;
  if (of === "fee") {
    const isNone = perLitre === null && perFiring === null;
    return { change: { guestFee: isNone ? null : { perLitre: perLitre ?? 0, perFiring: perFiring ?? 0 } } };
  }
  if ((elementSetPrice === null) !== (elementLifeFirings === null)) {
    return {
      missing: "Elements need both: their price, and how many firings they last. Empty both to leave them out.",
    };
  }
  if ((shelfPrice === null) !== (shelfLifeFirings === null)) {
    return { missing: "A shelf needs both: its price, and how many firings it lasts. Empty both to leave it out." };
  }
  return { change: { elementSetPrice, elementLifeFirings, shelfPrice, shelfLifeFirings } };
}
