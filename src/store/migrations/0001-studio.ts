import { type Migration, tableOf } from "./migration.ts";

const stamps = { createdAt: "text", changedAt: "text" } as const;
const about = { aboutKind: "text?", aboutId: "text?" } as const;

/** What a studio keeps, to begin with. */
export const studio: Migration = {
  name: "0001-studio",
  steps: (schema, engine) => {
    const kinds = {
      kilns: tableOf(schema, engine, "kilns", {
        id: "text",
        kiln: "text",
        furniture: "text",
        rules: "text",
        ...stamps,
      }),
      clayBodies: tableOf(schema, engine, "clayBodies", {
        id: "text",
        name: "text",
        cones: "text?",
        note: "text",
        ...stamps,
      }),
      glazes: tableOf(schema, engine, "glazes", {
        id: "text",
        name: "text",
        cones: "text?",
        runs: "whole",
        note: "text",
        ...stamps,
      }),
      ware: tableOf(schema, engine, "ware", {
        id: "text",
        ware: "text",
        stage: "text",
        firingKind: "text?",
        dueOn: "text?",
        ownerNote: "text",
        clayBodyId: "text?",
        glazeId: "text?",
        ...stamps,
      })
        .addForeignKeyConstraint("wareClayBody", ["clayBodyId"], "clayBodies", ["id"])
        .addForeignKeyConstraint("wareGlaze", ["glazeId"], "glazes", ["id"]),
      loads: tableOf(schema, engine, "loads", {
        id: "text",
        kilnId: "text",
        name: "text",
        state: "text",
        request: "text",
        plan: "text?",
        pins: "text",
        ticks: "text",
        sources: "text",
        version: "whole",
        ...stamps,
      }).addForeignKeyConstraint("loadKiln", ["kilnId"], "kilns", ["id"]),
      firings: tableOf(schema, engine, "firings", {
        id: "text",
        kilnId: "text",
        loadId: "text?",
        name: "text",
        state: "text",
        programme: "text?",
        startedAt: "text?",
        endedAt: "text?",
        meterReadings: "text",
        ...stamps,
      })
        .addForeignKeyConstraint("firingKiln", ["kilnId"], "kilns", ["id"])
        .addForeignKeyConstraint("firingLoad", ["loadId"], "loads", ["id"]),
      notes: tableOf(schema, engine, "notes", { id: "text", ...about, text: "text", ...stamps }),
      photos: tableOf(schema, engine, "photos", {
        id: "text",
        ...about,
        mediaType: "text",
        byteLength: "whole",
        caption: "text",
        takenAt: "text?",
        ...stamps,
      }),
    };
    const tables = Object.entries(kinds).map(([name, table]) => table.addPrimaryKeyConstraint(`${name}Id`, ["id"]));
    const pictures = tableOf(schema, engine, "pictures", { photoId: "text", bytes: "bytes" })
      .addPrimaryKeyConstraint("picturePhotoId", ["photoId"])
      .addForeignKeyConstraint("picturePhoto", ["photoId"], "photos", ["id"], (key) => key.onDelete("cascade"));
    const readings = tableOf(schema, engine, "readings", {
      firingId: "text",
      probe: "text",
      at: "text",
      tempC: "number",
    })
      .addPrimaryKeyConstraint("readingMoment", ["firingId", "probe", "at"])
      .addForeignKeyConstraint("readingFiring", ["firingId"], "firings", ["id"], (key) => key.onDelete("cascade"));
    const index = (name: string, table: string, columns: string[]) =>
      schema.createIndex(name).on(table).columns(columns);
    return [
      ...tables,
      pictures,
      readings,
      index("wareByStage", "ware", ["stage"]),
      index("wareByClayBody", "ware", ["clayBodyId"]),
      index("wareByGlaze", "ware", ["glazeId"]),
      index("loadsByKiln", "loads", ["kilnId"]),
      index("firingsByKiln", "firings", ["kilnId"]),
      index("firingsByLoad", "firings", ["loadId"]),
      index("notesByAbout", "notes", ["aboutKind", "aboutId"]),
      index("photosByAbout", "photos", ["aboutKind", "aboutId"]),
    ];
  },
};
