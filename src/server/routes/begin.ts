import type { FastifyPluginAsyncTypebox } from "@fastify/type-provider-typebox";
import { Type } from "typebox";
import { OneOf } from "../../measures/schema.ts";
import { answers, StudioCardShape } from "../answering/answers.ts";
import { Refusal } from "../answering/refusals.ts";
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
        if (!(await studioCard(studio)).isNew) throw begunAlready();
        if (body.with === "empty") await studio.beginEmpty();
        else await studio.beginWithDemo();
        return studioCard(studio);
      },
    );
  };

const begunAlready = (): Refusal =>
  new Refusal(409, {
    code: "begun-already",
    path: "",
    found: "a studio that has begun",
    expected: "a new one: serve another folder with --data FOLDER, or restore an archive",
  });
