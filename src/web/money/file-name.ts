import type { FiringRecord } from "../../studio/records/firing-record.ts";

/** A name for a file about a firing that every system takes: "2026-11-09-glaze-cone-6-shares.csv". */
export function fileName({ name, startedAt, createdAt }: FiringRecord, what: string): string {
  const plain = name
    .normalize("NFKD")
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, "-")
    .replaceAll(/^-+|-+$/g, "");
  return [(startedAt ?? createdAt).slice(0, 10), plain, what].filter(Boolean).join("-").concat(".csv");
}
