import type { Migration } from "./migration.ts";

/** Pieces whose judgement was taken back, and when: an older one that comes late counts no more. */
export const judgementsTakenBack: Migration = {
  name: "0005-judgements-taken-back",
  steps: (schema, engine) => [schema.alterTable("firings").addColumn("takenBack", engine.types.text)],
};
