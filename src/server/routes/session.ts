import type { FastifyPluginAsyncTypebox } from "@fastify/type-provider-typebox";
import { Type } from "typebox";
import { answers, ErrorShape } from "../answering/answers.ts";
import { Refusal } from "../answering/refusals.ts";
import type { Door } from "../guarding/door.ts";

const SessionShape = Type.Object(
  {
    needsPassphrase: Type.Boolean({ description: "Whether this studio asks for a passphrase at all." }),
    isOpen: Type.Boolean({ description: "Whether this browser may come in." }),
  },
  { additionalProperties: false },
);
const Words = Type.Object(
  { passphrase: Type.String({ maxLength: 400, description: "The passphrase the server was started with." }) },
  { additionalProperties: false },
);

/** GET, POST and DELETE /session: giving the passphrase, and going. */
export const sessionRoutes =
  (door: Door): FastifyPluginAsyncTypebox =>
  async (app) => {
    app.get(
      "/session",
      { schema: { summary: "Whether a passphrase is asked.", tags: ["session"], response: answers(SessionShape) } },
      async (request) => ({ needsPassphrase: door.isLocked, isOpen: door.isOpenFor(request) }),
    );
    app.post(
      "/session",
      {
        schema: { summary: "Give the passphrase.", tags: ["session"], body: Words, response: answers(SessionShape) },
      },
      async (request, reply) => {
        if (!door.isLocked) return { needsPassphrase: false, isOpen: true };
        const waitMs = await door.open(request, reply, request.body.passphrase);
        if (waitMs === 0) return { needsPassphrase: true, isOpen: true };
        if (waitMs === "wrong") {
          throw new Refusal(403, {
            code: "wrong-passphrase",
            path: "passphrase",
            found: "another passphrase",
            expected: "the one the studio was started with",
          });
        }
        reply.header("retry-after", Math.ceil(waitMs / 1000));
        throw new Refusal(429, {
          code: "too-many",
          path: "passphrase",
          found: "too many tries from this address",
          expected: `a wait of ${Math.ceil(waitMs / 60_000)} min before the next`,
        });
      },
    );
    app.delete(
      "/session",
      { schema: { summary: "Go.", tags: ["session"], response: { 204: Type.Null(), "4xx": ErrorShape } } },
      async (request, reply) => {
        door.close(request, reply);
        return reply.status(204).send(null);
      },
    );
  };
