import { type Migration, tableOf } from "./migration.ts";

/** Readings gathered by minute and hour, kept up as readings come in. */
export const rollUps: Migration = {
  name: "0004-roll-ups",
  steps: (schema, engine) => [
    tableOf(schema, engine, "readingRollUps", {
      firingId: "text",
      period: "text",
      probe: "text",
      at: "text",
      count: "whole",
      leastC: "number",
      mostC: "number",
      sumC: "number",
      firstAt: "text",
      firstC: "number",
      lastAt: "text",
      lastC: "number",
    })
      .addPrimaryKeyConstraint("readingRollUp", ["firingId", "period", "probe", "at"])
      .addForeignKeyConstraint("rollUpFiring", ["firingId"], "firings", ["id"], (key) => key.onDelete("cascade")),
  ],
};
