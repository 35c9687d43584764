import type { LoadRecord } from "../../../studio/records/load-record.ts";

export interface SheetWish {
  readonly paper: "a4" | "letter";
  readonly units: "metric" | "inches";
  readonly kind: "pdf" | "svg";
}

/** Where the server hands out a load's sheet. */
export const sheetAddress = ({ id }: Pick<LoadRecord, "id">, { paper, units, kind }: SheetWish): string =>
  `/api/loads/${encodeURIComponent(id)}/sheet?paper=${paper}&units=${units}&kind=${kind}`;
