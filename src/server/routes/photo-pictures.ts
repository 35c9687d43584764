import type { FastifyPluginAsyncTypebox } from "@fastify/type-provider-typebox";
import { Type } from "typebox";
import { KINDS } from "../../studio/records/all-kinds.ts";
import { Id } from "../../studio/records/fields.ts";
import { PHOTO_TYPES } from "../../studio/records/note-and-photo-records.ts";
import { unknownRecord } from "../../studio/records/refusals.ts";
import { ErrorShape } from "../answering/answers.ts";
import { asBuffer } from "../answering/file-answer.ts";
import type { Studio } from "../studio.ts";

const ById = Type.Object({ id: Id("The photo.") }, { additionalProperties: false });
const picture = { schema: { type: "string", format: "binary" } };

/** GET /photos/:id/picture. A photo's picture never becomes another: the browser may keep it. */
export const pictureRoute =
  ({ store }: Studio): FastifyPluginAsyncTypebox =>
  async (app) => {
    app.get(
      "/photos/:id/picture",
      {
        schema: {
          summary: "The picture itself.",
          tags: ["photos"],
          params: ById,
          response: {
            200: {
              description: "The picture",
              content: Object.fromEntries(PHOTO_TYPES.map((type) => [type, picture])),
            },
            "4xx": ErrorShape,
            "5xx": ErrorShape,
          },
        },
      },
      async ({ params }, reply) => {
        const { card, bytes } = await store.read(async (records) => ({
          card: await records.photos.get(params.id),
          bytes: await records.photos.picture(params.id),
        }));
        if (card === null || bytes === null) throw unknownRecord(KINDS.photos, params.id);
        reply.header("cache-control", "private, max-age=31536000, immutable");
        return reply.type(card.mediaType).send(asBuffer(bytes));
      },
    );
  };
