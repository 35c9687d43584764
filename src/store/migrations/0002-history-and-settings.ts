import { type Migration, tableOf } from "./migration.ts";

/** What was done, so that it can be undone; what holds for the whole studio; loads that are another way of one. */
export const historyAndSettings: Migration = {
  name: "0002-history-and-settings",
  steps: (schema, engine) => {
    const { text } = engine.types;
    return [
      schema.alterTable("loads").addColumn("alternativeOf", text),
      schema.alterTable("loads").addColumn("takenBack", text),
      tableOf(schema, engine, "settings", { id: "text", settings: "text" }).addPrimaryKeyConstraint("settingsId", [
        "id",
      ]),
      tableOf(schema, engine, "history", {
        id: "text",
        place: "whole",
        at: "text",
        scope: "text",
        command: "text",
        summary: "text",
        standing: "text",
        changes: "text",
        settings: "text?",
      }).addPrimaryKeyConstraint("historyId", ["id"]),
      tableOf(schema, engine, "historyPictures", { entryId: "text", photoId: "text", bytes: "bytes" })
        .addPrimaryKeyConstraint("historyPicture", ["entryId", "photoId"])
        .addForeignKeyConstraint("historyPictureEntry", ["entryId"], "history", ["id"], (key) =>
          key.onDelete("cascade"),
        ),
      schema.createIndex("historyByPlace").unique().on("history").column("place"),
      schema.createIndex("historyByScope").on("history").columns(["scope", "place"]),
    ];
  },
};
