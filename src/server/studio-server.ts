import cookie from "@fastify/cookie";
import helmet from "@fastify/helmet";
import rateLimit from "@fastify/rate-limit";
import fastify, { type FastifyInstance, type FastifyServerOptions } from "fastify";
import { usualWorkers } from "../workers/plan-on-workers.ts";
import { ReadyThreads } from "../workers/ready-threads.ts";
import { checkRequest } from "./answering/check-request.ts";
import { compressAnswers } from "./answering/compressed-answers.ts";
import { EventStreams } from "./answering/event-stream.ts";
import { readJsonBodies } from "./answering/read-body.ts";
import { answerErrors, Refusal } from "./answering/refusals.ts";
import { closeUnusedLines } from "./answering/unused-lines.ts";
import { CONTENT_POLICY } from "./guarding/content-policy.ts";
import { Door } from "./guarding/door.ts";
import { answerOwnHosts } from "./guarding/own-hosts.ts";
import { refuseOtherSites } from "./guarding/same-site.ts";
import { isThisMachine } from "./guarding/this-machine.ts";
import { Notices } from "./notices/notices.ts";
import { planAndKeep } from "./planning/do-plan-job.ts";
import { PlanJobs } from "./planning/plan-jobs.ts";
import { MqttFeed } from "./readings/mqtt-feed.ts";
import { Readings } from "./readings/readings.ts";
import { archiveRoutes } from "./routes/archive.ts";
import { backupRoutes } from "./routes/backups.ts";
import { beginRoute } from "./routes/begin.ts";
import { commandRoutes } from "./routes/commands.ts";
import { eventRoutes } from "./routes/events.ts";
import { firingReadingRoutes } from "./routes/firing-readings.ts";
import { historyRoutes } from "./routes/history.ts";
import { loggerRoute } from "./routes/loggers.ts";
import { mailRoutes } from "./routes/mail.ts";
import { describeRoutes, openApiRoute } from "./routes/openapi.ts";
import { pictureRoute } from "./routes/photo-pictures.ts";
import { photoRoute } from "./routes/photos.ts";
import { planRoutes } from "./routes/plans.ts";
import { readingRoutes } from "./routes/readings.ts";
import { recordRoutes } from "./routes/records.ts";
import { sessionRoutes } from "./routes/session.ts";
import { settingsRoute } from "./routes/settings.ts";
import { sheetRoutes } from "./routes/sheets.ts";
import { studioCardRoute } from "./routes/studio-card.ts";
import { wareCsvRoutes } from "./routes/ware-csv.ts";
import { watchRoutes } from "./routes/watch.ts";
import type { Certificate } from "./running/certificate.ts";
import type { ServerSetting } from "./server-setting.ts";
import { handOutFiles } from "./static-files.ts";
import { Studio } from "./studio.ts";
import { Watches } from "./watching/watches.ts";

/** Requests a minute from one address of the home network: far more than a phone in use sends. */
const MOST_A_MINUTE = 1200;
/** The first page she opens goes before the planning threads, which nobody needs for some seconds yet. */
const FIRST_PAGE_MS = 1500;

/** The server of one studio, not yet listening. */
export async function studioServer(setting: ServerSetting): Promise<FastifyInstance> {
  const studio = new Studio(setting);
  const say = setting.say ?? (() => {});
  const readings = new Readings(studio);
  const notices = new Notices(studio, { ...setting, say });
  const watches = new Watches({ ...setting, studio, notices, keeper: readings.keeper, pace: setting.pace ?? 1 });
  const streams = new EventStreams();
  const door = new Door(setting);
  const threads = new ReadyThreads({ "plan-worker": usualWorkers(), "bound-worker": 1 });
  const jobs = new PlanJobs(setting.newId, planAndKeep(studio, threads, setting.complain));
  const options: FastifyServerOptions & { https?: Certificate } = {
    trustProxy: false,
    exposeHeadRoutes: false,
    routerOptions: { maxParamLength: 200 },
    ...(setting.certificate === null ? {} : { https: setting.certificate }),
  };
  const app = fastify(options);
  app.setValidatorCompiler(checkRequest);
  app.setSerializerCompiler(() => (answer) => JSON.stringify(answer));
  readJsonBodies(app);
  answerErrors(app, setting.complain);
  compressAnswers(app);
  await app.register(helmet, CONTENT_POLICY);
  answerOwnHosts(app, setting.hosts);
  await app.register(rateLimit, {
    max: MOST_A_MINUTE,
    timeWindow: 60_000,
    allowList: (request) => isThisMachine(request.ip),
    errorResponseBuilder: (_request, { ttl }) => tooMany(ttl),
  });
  await app.register(cookie);
  refuseOtherSites(app);
  await describeRoutes(app, setting.version);
  await app.register(
    async (api) => {
      door.guard(api);
      await api.register(sessionRoutes(door));
      await api.register(studioCardRoute(studio));
      await api.register(beginRoute(studio));
      await api.register(recordRoutes(studio));
      await api.register(settingsRoute(studio));
      await api.register(commandRoutes(studio));
      await api.register(historyRoutes(studio));
      await api.register(planRoutes(studio, jobs, streams));
      await api.register(photoRoute(studio));
      await api.register(pictureRoute(studio));
      await api.register(sheetRoutes(studio));
      await api.register(wareCsvRoutes(studio));
      await api.register(archiveRoutes(studio));
      await api.register(backupRoutes(studio));
      await api.register(loggerRoute(studio));
      await api.register(readingRoutes(studio, readings.loggers, readings.feed));
      await api.register(firingReadingRoutes(studio, readings.keeper));
      await api.register(watchRoutes(studio, watches, streams));
      await api.register(mailRoutes(studio, notices.sender));
      await api.register(eventRoutes(studio, streams));
      openApiRoute(api);
    },
    { prefix: "/api" },
  );
  await handOutFiles(app, setting.webFolder);
  closeUnusedLines(app);
  const { mqtt: wish = null } = setting;
  const mqtt = wish === null ? null : new MqttFeed({ ...setting, ...readings, wish, say });
  app.addHook("onReady", async () => {
    void watches.refresh();
  });
  app.addHook("onListen", async () => {
    setTimeout(() => threads.makeReady(), FIRST_PAGE_MS).unref();
  });
  app.addHook("preClose", async () => {
    await jobs.close();
    await threads.end();
    await mqtt?.close();
    await readings.close();
    await watches.close();
    await notices.close();
    streams.endAll();
  });
  await app.ready();
  return app;
}

const tooMany = (waitMs: number): Refusal =>
  new Refusal(429, {
    code: "too-many",
    path: "",
    found: `more than ${MOST_A_MINUTE} requests in a minute from this address`,
    expected: `a wait of ${Math.ceil(waitMs / 1000)} s`,
  });
