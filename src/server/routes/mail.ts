import type { FastifyPluginAsyncTypebox } from "@fastify/type-provider-typebox";
import { Type } from "typebox";
import type { MailCard, NoticeTrial, StudioNotice } from "../../studio/api/notices-contract.ts";
import { answers, ErrorShape } from "../answering/answers.ts";
import { type Mail, MailSchema, readMail, removeMail, writeMail } from "../notices/mail-file.ts";
import type { NoticeSender } from "../notices/notice-sender.ts";
import type { Studio } from "../studio.ts";

const { host, port, user, password, from } = MailSchema.properties;
const Setting = Type.Object(
  { host, port, user, password: Type.Optional(password), from },
  { additionalProperties: false },
);
const CardShape = Type.Unsafe<MailCard>(
  Type.Object(
    {
      host: Type.String(),
      port: Type.Integer(),
      user: Type.String(),
      from: Type.String(),
      hasPassword: Type.Boolean(),
    },
    { additionalProperties: false, description: "The mail server; all empty where none is set." },
  ),
);
const TrialShape = Type.Unsafe<NoticeTrial>(
  Type.Object(
    {
      email: Type.String({ description: "sent, not set, or why not." }),
      webhook: Type.String({ description: "sent, not set, or why not." }),
    },
    { additionalProperties: false },
  ),
);

/** GET, POST and DELETE /mail, and POST /notices/try: by which mail server notices go, and whether they arrive. */
export const mailRoutes =
  (studio: Studio, sender: NoticeSender): FastifyPluginAsyncTypebox =>
  async (app) => {
    const tags = ["notices"];
    app.get(
      "/mail",
      { schema: { summary: "The mail server that notices are sent by.", tags, response: answers(CardShape) } },
      async () => cardOf(readMail(studio.dataFolder)),
    );
    app.post(
      "/mail",
      {
        schema: {
          summary: "Set the mail server; its password is kept in the data folder alone.",
          tags,
          body: Setting,
          response: answers(CardShape),
        },
      },
      async ({ body }) => {
        writeMail(studio.dataFolder, { ...body, password: body.password ?? passwordFor(studio.dataFolder, body) });
        return cardOf(readMail(studio.dataFolder));
      },
    );
    app.delete(
      "/mail",
      { schema: { summary: "Forget the mail server.", tags, response: { 204: Type.Null(), "4xx": ErrorShape } } },
      async (_request, reply) => {
        removeMail(studio.dataFolder);
        return reply.status(204).send(null);
      },
    );
    app.post(
      "/notices/try",
      { schema: { summary: "Send a notice by each way that is set.", tags, response: answers(TrialShape) } },
      async () => sender.try(trialNotice(studio)),
    );
  };

/** The password stays with the server and the name it was given for, and goes to no other. */
function passwordFor(dataFolder: string, wish: Pick<Mail, "host" | "user">): string {
  const before = readMail(dataFolder);
  return before !== null && before.host === wish.host && before.user === wish.user ? before.password : "";
}

const cardOf = (mail: Mail | null): MailCard =>
  mail === null
    ? { host: "", port: 587, user: "", from: "", hasPassword: false }
    : { host: mail.host, port: mail.port, user: mail.user, from: mail.from, hasPassword: mail.password !== "" };

const trialNotice = ({ now, newId }: Studio): StudioNotice => ({
  ...{ id: newId(), firingId: "", firingName: "no firing", kind: "a trial", since: now(), until: null },
  message: "This is how a notice from Wareboard reaches you. Nothing is wrong.",
  isDanger: false,
});
