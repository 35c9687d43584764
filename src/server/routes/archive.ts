import { Readable } from "node:stream";
import type { FastifyPluginAsyncTypebox } from "@fastify/type-provider-typebox";
import { Type } from "typebox";
import { MOST_ARCHIVE_BYTES } from "../../store/archive/archive-format.ts";
import { writeArchive } from "../../store/archive/write-archive.ts";
import { restoreBackup } from "../../store/backups.ts";
import { answers, ErrorShape } from "../answering/answers.ts";
import { refuseLongUpload, withArrived } from "../answering/arriving-file.ts";
import { checkAllButBody } from "../answering/check-request.ts";
import { asBuffer, nameFile } from "../answering/file-answer.ts";
import { wrongContentType } from "../answering/refusals.ts";
import { arrivingFolder, backupFolder } from "../running/data-folder.ts";
import type { Studio } from "../studio.ts";
import { RestoredShape, restored } from "./restored.ts";

/** What a browser calls a zip file. */
const ZIP_TYPES = ["application/zip", "application/x-zip-compressed"];
const binary = { schema: { type: "string", format: "binary" } };

/** GET and POST /archive: the whole studio in one file, and one put in its place. */
export const archiveRoutes =
  (studio: Studio): FastifyPluginAsyncTypebox =>
  async (app) => {
    // Streamed by the route itself: a thousand times what other bodies may weigh.
    app.addContentTypeParser(ZIP_TYPES, { bodyLimit: MOST_ARCHIVE_BYTES }, (_request, body, done) => done(null, body));
    app.get(
      "/archive",
      {
        schema: {
          summary: "The whole studio in one file.",
          tags: ["archive"],
          response: {
            200: { description: "The archive", content: { "application/zip": binary } },
            "4xx": ErrorShape,
            "5xx": ErrorShape,
          },
        },
      },
      async (_request, reply) => {
        const now = studio.now();
        const archive = await writeArchive(studio.store, now);
        nameFile(reply, "attachment", `wareboard-studio-${now.slice(0, 10)}.zip`);
        return reply.header("cache-control", "no-store").type("application/zip").send(asBuffer(archive));
      },
    );
    app.post(
      "/archive",
      {
        bodyLimit: MOST_ARCHIVE_BYTES,
        schema: {
          summary: "Put an archive in place of the studio, which is saved first.",
          tags: ["archive"],
          consumes: [...ZIP_TYPES],
          body: { content: { "application/zip": { schema: Type.Unsafe({ type: "string", format: "binary" }) } } },
          response: answers(RestoredShape),
        },
        validatorCompiler: checkAllButBody,
      },
      async (request) => {
        const { body } = request;
        if (!(body instanceof Readable)) throw wrongContentType(request.headers["content-type"], "application/zip");
        refuseLongUpload(request.headers["content-length"], MOST_ARCHIVE_BYTES);
        return withArrived(body, arrivingFolder(studio.dataFolder), MOST_ARCHIVE_BYTES, (bytes) =>
          restored(studio, () => restoreBackup(studio.store, bytes, backupFolder(studio.dataFolder), studio.now())),
        );
      },
    );
  };
