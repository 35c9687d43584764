import type { FastifyPluginAsyncTypebox } from "@fastify/type-provider-typebox";
import { Type } from "typebox";
import { BadInput, shown } from "../../measures/bad-input.ts";
import { OneOf } from "../../measures/schema.ts";
import { KINDS } from "../../studio/records/all-kinds.ts";
import { checkMoment, Id, Moment } from "../../studio/records/fields.ts";
import type { FiringRecord } from "../../studio/records/firing-record.ts";
import { unknownRecord } from "../../studio/records/refusals.ts";
import { answers } from "../answering/answers.ts";
import { LogLookShape, ReadingsKeptShape, ShownReadingsShape } from "../answering/reading-answers.ts";
import { Refusal } from "../answering/refusals.ts";
import { lookAtLog } from "../readings/log-look.ts";
import type { ReadingKeeper } from "../readings/reading-keeper.ts";
import { readOne, TypedReadingSchema } from "../readings/sent-reading.ts";
import { shownReadings } from "../readings/shown-readings.ts";
import type { Studio } from "../studio.ts";

const USUAL_MOST = 2000;
const MOST = 20_000;
const MOST_CSV_CHARACTERS = 7 * 1024 * 1024;

const ById = Type.Object({ id: Id("The firing.") }, { additionalProperties: false });
const Wish = Type.Object(
  {
    by: Type.Optional(
      OneOf(["raw", "minute", "hour"], "Each reading, or gathered; where left out, the finest that fits."),
    ),
    from: Type.Optional(Moment("The earliest.")),
    to: Type.Optional(Moment("All before this.")),
    most: Type.Optional(
      Type.String({ maxLength: 6, description: `How many of each probe, to ${MOST}; ${USUAL_MOST} where left out.` }),
    ),
  },
  { additionalProperties: false },
);
const Preview = Type.Object(
  { preview: Type.Optional(OneOf(["1"], "Only look; nothing is kept.")) },
  { additionalProperties: false },
);
const File = Type.Object(
  {
    csv: Type.String({ maxLength: MOST_CSV_CHARACTERS, description: "The log as it stands in its file." }),
    options: Type.Optional(
      Type.Object(
        {
          dateOrder: Type.Optional(OneOf(["day-first", "month-first"], "How 3/4 is to be read.")),
          temperature: Type.Optional(OneOf(["C", "F"], "The unit.")),
          timeUnit: Type.Optional(OneOf(["seconds", "minutes", "hours"], "The unit of a bare number of time.")),
          missingHour: Type.Optional(OneOf(["clock-change", "no-readings"], "What an hour missing is.")),
          probes: Type.Optional(Type.Array(Type.String({ maxLength: 200 }), { maxItems: 50 })),
          firing: Type.Optional(Type.Integer({ minimum: 1, description: "Which of several in the file." })),
          startsAt: Type.Optional(Moment("When its first reading was.")),
        },
        { additionalProperties: false, description: "What was answered to the questions before." },
      ),
    ),
  },
  { additionalProperties: false },
);

/** GET and POST /firings/:id/readings, and POST /firings/:id/readings-csv: a firing's temperatures. */
export const firingReadingRoutes =
  (studio: Studio, keeper: ReadingKeeper): FastifyPluginAsyncTypebox =>
  async (app) => {
    app.get(
      "/firings/:id/readings",
      {
        schema: {
          summary: "A firing's temperatures, each or gathered by minute or hour.",
          tags: ["readings"],
          params: ById,
          querystring: Wish,
          response: answers(ShownReadingsShape),
        },
      },
      async ({ params, query }) => {
        const { by, from, to } = query;
        if (from !== undefined) checkMoment(from, "from");
        if (to !== undefined) checkMoment(to, "to");
        const most = mostAsked(query.most);
        return studio.store.read(async (records) => {
          if ((await records.firings.get(params.id)) === null) throw unknownRecord(KINDS.firings, params.id);
          return shownReadings(records, params.id, { by, from, to, most });
        });
      },
    );
    app.post(
      "/firings/:id/readings",
      {
        schema: {
          summary: "One temperature, typed in.",
          tags: ["readings"],
          params: ById,
          body: TypedReadingSchema,
          response: answers(ReadingsKeptShape),
        },
      },
      async ({ params, body }) => {
        const { firing, probes } = await withProbes(studio, params.id);
        const { probe = probes[0], ...sent } = body;
        if (probe === undefined) throw noProbe();
        const reading = readOne(sent, "", studio.now());
        if (!isIn(firing, reading.at)) throw outsideFiring(firing, reading.at);
        await keeper.keep({ firingId: firing.id, probe, readings: [reading] });
        return { kept: 1, leftAside: 0 };
      },
    );
    app.post(
      "/firings/:id/readings-csv",
      {
        schema: {
          summary: "The temperatures of a firing that is over, from a log's file.",
          tags: ["readings"],
          params: ById,
          querystring: Preview,
          body: File,
          response: answers(LogLookShape),
        },
      },
      async ({ params, query, body }) => {
        const { firing, probes } = await withProbes(studio, params.id);
        const { look, series } = lookAtLog(body, firing, probes);
        if (look.kind === "question" || query.preview !== undefined) return look;
        await Promise.all(series.map((each) => keeper.keep({ firingId: firing.id, ...each })));
        return { ...look, kept: true };
      },
    );
  };

async function withProbes({ store }: Studio, id: string): Promise<{ firing: FiringRecord; probes: string[] }> {
  return store.read(async (records) => {
    const firing = await records.firings.get(id);
    if (firing === null) throw unknownRecord(KINDS.firings, id);
    const kiln = await records.kilns.get(firing.kilnId);
    return { firing, probes: (kiln?.kiln.probes ?? []).map(({ name }) => name) };
  });
}

function mostAsked(text: string | undefined): number {
  if (text === undefined) return USUAL_MOST;
  const most = /^\d+$/.test(text) ? Number(text) : 0;
  if (most >= 1 && most <= MOST) return most;
  throw new BadInput({
    code: "out-of-range",
    path: "most",
    found: shown(text),
    expected: `a whole number from 1 to ${MOST}`,
  });
}

const isIn = ({ startedAt, endedAt }: FiringRecord, at: string): boolean =>
  startedAt !== null && at >= startedAt && (endedAt === null || at <= endedAt);

const noProbe = (): BadInput =>
  new BadInput({
    code: "missing-field",
    path: "probe",
    found: "nothing, and no probe on the kiln",
    expected: "the name of what was read",
  });

const outsideFiring = ({ startedAt, endedAt }: FiringRecord, at: string): Refusal =>
  new Refusal(409, {
    code: "no-firing-under-way",
    path: "at",
    found: startedAt === null ? "a firing that has not been started" : at,
    expected:
      startedAt === null
        ? "the firing to be started first"
        : `a moment from ${startedAt}${endedAt === null ? " on" : ` to ${endedAt}`}`,
  });
