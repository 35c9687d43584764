import type { FastifyPluginAsyncTypebox } from "@fastify/type-provider-typebox";
import { Type } from "typebox";
import { orNull } from "../../studio/records/fields.ts";
import type { StudioRecords } from "../../studio/records/store.ts";
import { previewWareImport, type WareImport } from "../../studio/records/ware-csv/preview-ware-import.ts";
import { writeWareCsv } from "../../studio/records/ware-csv/write-ware-csv.ts";
import { WareRecordSchema } from "../../studio/records/ware-record.ts";
import { answers, ErrorShape, recordShape } from "../answering/answers.ts";
import { nameFile } from "../answering/file-answer.ts";
import type { Studio } from "../studio.ts";

const MOST_CSV_CHARACTERS = 7 * 1024 * 1024;
const List = Type.Object(
  {
    csv: Type.String({ maxLength: MOST_CSV_CHARACTERS, description: "The list as it stands in the file." }),
    stage: Type.Optional(orNull(WareRecordSchema.properties.stage)),
  },
  { additionalProperties: false },
);
const PreviewShape = Type.Unsafe<WareImport>(
  Type.Object(
    {
      rows: Type.Array(
        Type.Object(
          {
            line: Type.Integer({ description: "Line of the file, from 1." }),
            what: Type.Union(["new", "changed", "same", "refused"].map((what) => Type.Literal(what))),
            name: Type.String({ description: "The batch's name, as far as it can be told." }),
            changes: Type.Array(
              Type.Object(
                { heading: Type.String(), from: Type.String(), to: Type.String() },
                { additionalProperties: false },
              ),
            ),
            notes: Type.Array(Type.String({ description: "What to look at before saying yes." })),
            reason: Type.Union([Type.String(), Type.Null()], { description: "Why the row is refused." }),
            after: orNull(recordShape("ware")),
            before: orNull(recordShape("ware")),
          },
          { additionalProperties: false },
        ),
      ),
      leftAside: Type.Array(Type.String({ description: "A column that means nothing here." })),
    },
    { additionalProperties: false },
  ),
);

/** GET /ware.csv and POST /ware-csv-preview: the list of ware for a spreadsheet, and back. */
export const wareCsvRoutes =
  (studio: Studio): FastifyPluginAsyncTypebox =>
  async (app) => {
    app.get(
      "/ware.csv",
      {
        schema: {
          summary: "The ware as a list for a spreadsheet.",
          tags: ["ware"],
          response: {
            200: { description: "The list", content: { "text/csv": { schema: { type: "string" } } } },
            "4xx": ErrorShape,
            "5xx": ErrorShape,
          },
        },
      },
      async (_request, reply) => {
        const { ware, ...names } = await studio.store.read(wareAndNames);
        nameFile(reply, "attachment", `ware-${studio.now().slice(0, 10)}.csv`);
        return reply
          .header("cache-control", "no-store")
          .type("text/csv; charset=utf-8")
          .send(writeWareCsv(ware, names));
      },
    );
    app.post(
      "/ware-csv-preview",
      {
        schema: {
          summary: "What a list of ware would do, before anything is done.",
          tags: ["ware"],
          body: List,
          response: answers(PreviewShape),
        },
      },
      async ({ body }) => {
        const setting = await studio.store.read(wareAndNames);
        const { now, newId } = studio;
        // As the command import-ware reads it: where neither says, each new row must.
        return previewWareImport(body.csv, { ...setting, stage: body.stage ?? null, newId, now: now() });
      },
    );
  };

const wareAndNames = async (records: StudioRecords) => ({
  ware: await records.ware.list(),
  clayBodies: await records.clayBodies.list(),
  glazes: await records.glazes.list(),
});
