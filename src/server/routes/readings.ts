import type { FastifyPluginAsyncTypebox } from "@fastify/type-provider-typebox";
import { answers } from "../answering/answers.ts";
import { ReadingsKeptShape } from "../answering/reading-answers.ts";
import { Refusal } from "../answering/refusals.ts";
import { bearerToken } from "../guarding/own-token.ts";
import { Allowance } from "../readings/allowance.ts";
import type { Feed } from "../readings/feed.ts";
import type { Loggers } from "../readings/loggers.ts";
import { readSent, SentReadings } from "../readings/sent-reading.ts";
import type { Studio } from "../studio.ts";

const MOST_BYTES = 1024 * 1024;

/** POST /readings: temperatures from a logger. They are taken in; nothing ever goes back that switches a kiln. */
export const readingRoutes =
  (studio: Studio, loggers: Loggers, feed: Feed): FastifyPluginAsyncTypebox =>
  async (app) => {
    const allowance = new Allowance();
    app.post(
      "/readings",
      {
        bodyLimit: MOST_BYTES,
        config: { carriesToken: true },
        schema: {
          summary: "Temperatures from a logger, with its token; kept once this is answered.",
          description:
            "Send `Authorization: Bearer TOKEN` and one reading, or `{ readings: [...] }`. Sending one twice does no harm. Wareboard watches and advises; it never switches a kiln.",
          tags: ["readings"],
          body: SentReadings,
          response: answers(ReadingsKeptShape),
        },
        // Told apart and held to its shape below, in words that name the reading.
        validatorCompiler: () => (value: unknown) => ({ value }),
      },
      async (request, reply) => {
        const token = bearerToken(request);
        const logger = token === null ? null : await loggers.ofToken(token);
        if (logger === null) {
          reply.header("www-authenticate", "Bearer");
          throw noToken(token);
        }
        const now = studio.now();
        const readings = readSent(request.body, now);
        const waitMs = allowance.take(logger.id, readings.length, Date.parse(now));
        if (waitMs > 0) {
          const seconds = Math.ceil(waitMs / 1000);
          reply.header("retry-after", seconds);
          throw tooMany(seconds);
        }
        return feed.take(logger, readings);
      },
    );
  };

const noToken = (token: string | null): Refusal =>
  new Refusal(401, {
    code: "token-asked",
    path: "authorization",
    found: token === null ? "no token" : "a token of no logger that is kept",
    expected: "Authorization: Bearer, and the token told when the logger was added",
  });

const tooMany = (seconds: number): Refusal =>
  new Refusal(429, {
    code: "too-many",
    path: "readings",
    found: "far more readings than a probe has to say",
    expected: `a wait of ${seconds} s, and one reading a second`,
  });
