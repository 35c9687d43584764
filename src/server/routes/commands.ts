import type { FastifyPluginAsyncTypebox } from "@fastify/type-provider-typebox";
import { Type } from "typebox";
import { ALL_COMMANDS } from "../../studio/commands/all-commands.ts";
import { answers, CommandAnswerShape } from "../answering/answers.ts";
import { checkRequest } from "../answering/check-request.ts";
import type { Studio } from "../studio.ts";

const Key = Type.String({
  minLength: 1,
  maxLength: 64,
  description: "Makes it happen once, however often it is sent.",
});
const callOf = (input: object) =>
  Type.Object({ key: Key, input: Type.Unsafe<unknown>(input) }, { additionalProperties: false });
/** The call alone: its input is held to its schema where the command is done, so that paths begin inside it. */
const AnyCall = callOf({});
const Named = Type.Object({ name: Type.String({ maxLength: 64 }) }, { additionalProperties: false });

/** POST /commands/:name: one command, undoable. */
export const commandRoutes =
  (studio: Studio): FastifyPluginAsyncTypebox =>
  async (app) => {
    for (const { name, schema } of ALL_COMMANDS.values()) {
      app.post(
        `/commands/${name}`,
        {
          schema: {
            summary: `The command ${name}; it can be undone.`,
            tags: ["commands"],
            body: callOf(schema),
            response: answers(CommandAnswerShape),
          },
          validatorCompiler: (part) => checkRequest({ ...part, schema: AnyCall }),
        },
        async ({ body }) => studio.command(name, body),
      );
    }
    // A command there is none of is told from a wrong address.
    app.post(
      "/commands/:name",
      { schema: { hide: true, params: Named, body: AnyCall, response: answers(CommandAnswerShape) } },
      async ({ params, body }) => studio.command(params.name, body),
    );
  };
