import type { FastifyPluginAsyncTypebox } from "@fastify/type-provider-typebox";
import { Type } from "typebox";
import { OneOf } from "../../measures/schema.ts";
import { KINDS } from "../../studio/records/all-kinds.ts";
import { Id } from "../../studio/records/fields.ts";
import { unknownRecord } from "../../studio/records/refusals.ts";
import { answers, ErrorShape, PlanEventShape } from "../answering/answers.ts";
import type { EventStreams } from "../answering/event-stream.ts";
import type { PlanJobs } from "../planning/plan-jobs.ts";
import type { Studio } from "../studio.ts";

const LONGEST_SECONDS = 600;

const Wish = Type.Object(
  {
    loadId: Id("The load to plan."),
    keep: OneOf(["nothing", "pinned", "all"], "What stays as it stands."),
    seconds: Type.Optional(
      Type.Number({
        minimum: 0.05,
        maximum: LONGEST_SECONDS,
        description: "How long to look, at most; 2 where left out.",
      }),
    ),
    seed: Type.Optional(
      Type.Integer({ minimum: 0, maximum: 2 ** 31 - 1, description: "The same seed tries the same things." }),
    ),
  },
  { additionalProperties: false },
);
const ById = Type.Object({ id: Id("The planning.") }, { additionalProperties: false });
const JobShape = Type.Object({ jobId: Type.String({ description: "The planning." }) }, { additionalProperties: false });

/** POST /plans, GET /plans/:id/events, DELETE /plans/:id: planning a load. */
export const planRoutes =
  (studio: Studio, jobs: PlanJobs, streams: EventStreams): FastifyPluginAsyncTypebox =>
  async (app) => {
    app.post(
      "/plans",
      { schema: { summary: "Have a load planned.", tags: ["planning"], body: Wish, response: answers(JobShape) } },
      async ({ body }) => {
        const load = await studio.store.read((records) => records.loads.get(body.loadId));
        if (load === null) throw unknownRecord(KINDS.loads, body.loadId);
        return { jobId: jobs.begin(body).id };
      },
    );
    app.get(
      "/plans/:id/events",
      {
        schema: {
          summary: "What a planning finds, as it finds it (server-sent events).",
          tags: ["planning"],
          params: ById,
          response: {
            200: { description: "A stream of events", content: { "text/event-stream": { schema: PlanEventShape } } },
            "4xx": ErrorShape,
          },
        },
      },
      ({ params }, reply) => {
        const job = jobs.get(params.id);
        let leave = (): void => {};
        const stream = streams.begin(reply, () => leave());
        leave = job.listen((event) => {
          stream.send(event);
          if (event.kind !== "better") stream.end();
        });
      },
    );
    app.delete(
      "/plans/:id",
      {
        schema: {
          summary: "Stop a planning; it ends with the best it has found.",
          tags: ["planning"],
          params: ById,
          response: { 204: Type.Null(), "4xx": ErrorShape },
        },
      },
      async ({ params }, reply) => {
        jobs.stop(params.id);
        return reply.status(204).send(null);
      },
    );
  };
