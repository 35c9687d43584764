import { type Migration, tableOf } from "./migration.ts";

const stamps = { createdAt: "text", changedAt: "text" } as const;
const OF_FIRINGS = ["plannedStartAt", "shutOffAt", "foretold", "checklist", "cones", "outcomes", "notices"] as const;

/** What goes on around a firing: prepared, watched, unloaded, learned from; and the kiln kept in repair. */
export const aroundTheFiring: Migration = {
  name: "0003-around-the-firing",
  steps: (schema, engine) => {
    const kinds = {
      programmes: tableOf(schema, engine, "programmes", { id: "text", programme: "text", note: "text", ...stamps }),
      calibrations: tableOf(schema, engine, "calibrations", {
        id: "text",
        kilnId: "text",
        at: "text",
        firingIds: "text",
        calibration: "text",
        learned: "text?",
        ...stamps,
      }).addForeignKeyConstraint("calibrationKiln", ["kilnId"], "kilns", ["id"]),
      upkeep: tableOf(schema, engine, "upkeep", {
        id: "text",
        kilnId: "text",
        at: "text",
        what: "text",
        ohms: "text?",
        count: "whole?",
        note: "text",
        ...stamps,
      }).addForeignKeyConstraint("upkeepKiln", ["kilnId"], "kilns", ["id"]),
      loggers: tableOf(schema, engine, "loggers", {
        id: "text",
        kilnId: "text",
        probe: "text",
        name: "text",
        tokenHash: "text",
        ...stamps,
      }).addForeignKeyConstraint("loggerKiln", ["kilnId"], "kilns", ["id"]),
    };
    return [
      ...OF_FIRINGS.map((name) => schema.alterTable("firings").addColumn(name, engine.types.text)),
      ...Object.entries(kinds).map(([name, table]) => table.addPrimaryKeyConstraint(`${name}Id`, ["id"])),
      tableOf(schema, engine, "historyReadings", {
        entryId: "text",
        firingId: "text",
        probe: "text",
        readings: "text",
      })
        .addPrimaryKeyConstraint("historyReadingsOf", ["entryId", "firingId", "probe"])
        .addForeignKeyConstraint("historyReadingsEntry", ["entryId"], "history", ["id"], (key) =>
          key.onDelete("cascade"),
        ),
      schema.createIndex("calibrationsByKiln").on("calibrations").columns(["kilnId", "at"]),
      schema.createIndex("upkeepByKiln").on("upkeep").columns(["kilnId", "at"]),
      schema.createIndex("loggersByKiln").on("loggers").column("kilnId"),
    ];
  },
};
