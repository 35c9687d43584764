import type { FastifyPluginAsyncTypebox } from "@fastify/type-provider-typebox";
import { Type } from "typebox";
import { history } from "../../studio/history/undo.ts";
import { answers, CommandAnswerShape, HistoryEntryShape } from "../answering/answers.ts";
import type { Studio } from "../studio.ts";

const InScope = Type.Object(
  {
    scope: Type.String({
      minLength: 1,
      maxLength: 80,
      description: "ware, kilns, materials, settings, loads, notes, photos, or load:ID for one load.",
    }),
  },
  { additionalProperties: false },
);

/** GET /history, POST /undo and POST /redo, each within one scope. */
export const historyRoutes =
  (studio: Studio): FastifyPluginAsyncTypebox =>
  async (app) => {
    app.get(
      "/history",
      {
        schema: {
          summary: "What was done and undone in a scope, the newest first.",
          tags: ["commands"],
          querystring: InScope,
          response: answers(Type.Array(HistoryEntryShape)),
        },
      },
      async ({ query }) => history(studio.store, query.scope),
    );
    const back = { tags: ["commands"], body: InScope, response: answers(CommandAnswerShape) };
    app.post(
      "/undo",
      { schema: { summary: "Take back the newest thing of a scope that stands.", ...back } },
      async ({ body }) => studio.undo(body.scope),
    );
    app.post(
      "/redo",
      { schema: { summary: "Do again the thing of a scope that was undone last.", ...back } },
      async ({ body }) => studio.redo(body.scope),
    );
  };
