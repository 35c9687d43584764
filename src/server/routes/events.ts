import type { FastifyPluginAsyncTypebox } from "@fastify/type-provider-typebox";
import { ErrorShape, StudioEventShape } from "../answering/answers.ts";
import type { EventStreams } from "../answering/event-stream.ts";
import type { Studio } from "../studio.ts";

/** GET /events: tells every open browser what changed, by whichever of them. */
export const eventRoutes =
  ({ news }: Studio, streams: EventStreams): FastifyPluginAsyncTypebox =>
  async (app) => {
    app.get(
      "/events",
      {
        schema: {
          summary: "What changes, as it changes (server-sent events).",
          tags: ["studio"],
          response: {
            200: { description: "A stream of events", content: { "text/event-stream": { schema: StudioEventShape } } },
            "4xx": ErrorShape,
          },
        },
      },
      (_request, reply) => {
        const stop = news.listen((event) => stream.send(event));
        const stream = streams.begin(reply, stop);
      },
    );
  };
