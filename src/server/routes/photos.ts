import type { FastifyPluginAsyncTypebox } from "@fastify/type-provider-typebox";
import { Type } from "typebox";
import { Id, Moment } from "../../studio/records/fields.ts";
import { MOST_PHOTO_BYTES, PHOTO_TYPES, PhotoRecordSchema } from "../../studio/records/note-and-photo-records.ts";
import { answers, CommandAnswerShape } from "../answering/answers.ts";
import { checkAllButBody } from "../answering/check-request.ts";
import { wrongContentType } from "../answering/refusals.ts";
import type { Studio } from "../studio.ts";

const binary = Type.Unsafe<unknown>({ type: "string", format: "binary" });

// What an address cannot say, it leaves out.
const Card = Type.Object(
  {
    key: Type.Optional(Id("Makes it happen once, however often it is sent.")),
    id: Type.Optional(Id("The id it is to have; made where left out.")),
    aboutKind: Type.Optional(PhotoRecordSchema.properties.aboutKind),
    aboutId: Type.Optional(Id("The record it is about.")),
    caption: Type.Optional(PhotoRecordSchema.properties.caption),
    takenAt: Type.Optional(Moment("When it was taken.")),
  },
  { additionalProperties: false },
);

/** POST /photos: a picture, with what it is about in the address. */
export const photoRoute =
  (studio: Studio): FastifyPluginAsyncTypebox =>
  async (app) => {
    // What the bytes really are is found out from the bytes.
    app.addContentTypeParser(/^image\//, { parseAs: "buffer", bodyLimit: MOST_PHOTO_BYTES }, (_request, body, done) =>
      done(null, body),
    );
    app.post(
      "/photos",
      {
        bodyLimit: MOST_PHOTO_BYTES,
        schema: {
          summary: "Keep a photo; it can be undone.",
          tags: ["photos"],
          querystring: Card,
          body: { content: Object.fromEntries(PHOTO_TYPES.map((type) => [type, { schema: binary }])) },
          response: answers(CommandAnswerShape),
        },
        validatorCompiler: checkAllButBody,
      },
      async ({ query, body, headers }) => {
        if (!Buffer.isBuffer(body))
          throw wrongContentType(headers["content-type"], "image/jpeg, image/png or image/webp");
        const { key = studio.newId(), id, aboutKind = null, aboutId = null, caption = "", takenAt = null } = query;
        const card = { aboutKind, aboutId, caption, takenAt, ...(id === undefined ? {} : { id }) };
        return studio.addPhoto(card, new Uint8Array(body), key);
      },
    );
  };
