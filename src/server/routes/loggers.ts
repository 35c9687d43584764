import type { FastifyPluginAsyncTypebox } from "@fastify/type-provider-typebox";
import { Type } from "typebox";
import { Id } from "../../studio/records/fields.ts";
import { LoggerRecordSchema } from "../../studio/records/logger-record.ts";
import { answers } from "../answering/answers.ts";
import { NewLoggerShape } from "../answering/reading-answers.ts";
import { newToken } from "../readings/loggers.ts";
import type { Studio } from "../studio.ts";

const { kilnId, probe, name } = LoggerRecordSchema.properties;
const Wish = Type.Object(
  { id: Type.Optional(Id("The id it is to have; made where left out.")), kilnId, probe, name },
  { additionalProperties: false },
);

/** POST /loggers: a logger and its token, which is told here and never again. */
export const loggerRoute =
  (studio: Studio): FastifyPluginAsyncTypebox =>
  async (app) => {
    app.post(
      "/loggers",
      {
        schema: {
          summary: "Add what sends a kiln's temperatures; its token is told once.",
          tags: ["readings"],
          body: Wish,
          response: answers(NewLoggerShape),
        },
      },
      async ({ body }) => {
        const { token, tokenHash } = newToken();
        const id = body.id ?? studio.newId();
        await studio.command("add-logger", { key: studio.newId(), input: { ...body, id, tokenHash } });
        return { id, token };
      },
    );
  };
