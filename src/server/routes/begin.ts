import type { FastifyPluginAsyncTypebox } from "@fastify/type-provider-typebox";
import { Type } from "typebox";
import { OneOf } from "../../measures/schema.ts";
import { answers, StudioCardShape } from "../answering/answers.ts";
import type { Studio } from "../studio.ts";
import { studioCard } from "./studio-card.ts";

const How = Type.Object(
  { with: OneOf(["demo", "empty"], "An invented studio at work, or nothing yet.") },
  { additionalProperties: false },
);

/** POST /begin: how a new studio begins. */
export const beginRoute =
  (studio: Studio): FastifyPluginAsyncTypebox =>
  async (app) => {
    app.post(
      "/begin",
      {
        schema: {
          summary: "Begin a new studio, with the demo or with nothing.",
          tags: ["studio"],
          body: How,
          response: answers(StudioCardShape),
        },
      },
      async ({ body }) => {
        await studio.begin(body.with);
        return studioCard(studio);
      },
    );
  };
