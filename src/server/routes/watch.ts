import type { FastifyPluginAsyncTypebox } from "@fastify/type-provider-typebox";
import { Type } from "typebox";
import type { FiringWatch } from "../../studio/api/watch-contract.ts";
import { KINDS } from "../../studio/records/all-kinds.ts";
import { Id } from "../../studio/records/fields.ts";
import { recordPath, unknownRecord } from "../../studio/records/refusals.ts";
import { answers, ErrorShape } from "../answering/answers.ts";
import type { EventStreams } from "../answering/event-stream.ts";
import { Refusal } from "../answering/refusals.ts";
import { WatchShape } from "../answering/watch-answers.ts";
import type { Studio } from "../studio.ts";
import type { LiveFiring } from "../watching/live-firing.ts";
import type { Watches } from "../watching/watches.ts";

const ById = Type.Object({ id: Id("The firing.") }, { additionalProperties: false });

/** GET /firings/:id/watch and /watch/events: how a firing under way stands. It only tells; it never switches a kiln. */
export const watchRoutes =
  ({ store }: Studio, watches: Watches, streams: EventStreams): FastifyPluginAsyncTypebox =>
  async (app) => {
    const liveOf = async (id: string): Promise<LiveFiring> => {
      const live = await watches.get(id);
      if (live !== null) return live;
      const firing = await store.read(({ firings }) => firings.get(id));
      if (firing === null) throw unknownRecord(KINDS.firings, id);
      throw notUnderWay(id, firing.state);
    };
    app.get(
      "/firings/:id/watch",
      {
        schema: {
          summary: "How a firing under way stands, and how it is expected to go on.",
          tags: ["readings"],
          params: ById,
          response: answers(WatchShape),
        },
      },
      async ({ params }): Promise<FiringWatch> => (await liveOf(params.id)).shown(),
    );
    app.get(
      "/firings/:id/watch/events",
      {
        schema: {
          summary: "The same, at once and whenever something of it is new (server-sent events).",
          tags: ["readings"],
          params: ById,
          response: {
            200: { description: "A stream of events", content: { "text/event-stream": { schema: WatchShape } } },
            "4xx": ErrorShape,
          },
        },
      },
      async ({ params }, reply) => {
        const live = await liveOf(params.id);
        let leave = (): void => {};
        const stream = streams.begin(reply, () => leave());
        leave = live.listen(
          (watch) => stream.send(watch),
          () => stream.end(),
        );
        return reply;
      },
    );
  };

const notUnderWay = (id: string, state: string): Refusal =>
  new Refusal(409, {
    code: "not-under-way",
    path: recordPath(KINDS.firings, id),
    found: `a firing that is ${state}`,
    expected: "one that fires or cools",
  });
