import type { FastifyError, FastifyInstance } from "fastify";
import { BadInput, type BadInputFacts, shown } from "../../measures/bad-input.ts";
import type { ErrorAnswer } from "../../studio/api/contract.ts";

/** What the server refuses itself: bad input that is answered with another status than 400. */
export class Refusal extends BadInput {
  readonly status: number;

  constructor(status: number, facts: BadInputFacts) {
    super(facts);
    this.name = "Refusal";
    this.status = status;
  }
}

const STATUS_OF: Readonly<Record<string, number>> = {
  "unknown-record": 404,
  "unknown-command": 404,
  "id-taken": 409,
  "changed-since": 409,
  "still-in-use": 409,
  "begun-already": 409,
  "store-busy": 409,
  "nothing-to-undo": 409,
  "nothing-to-redo": 409,
  "too-large": 413,
  "corrupt-row": 500,
};

/** What the framework refuses before a route is asked, in Wareboard's words. */
const FRAMEWORK_REFUSALS: Readonly<Record<string, BadInputFacts>> = {
  FST_ERR_CTP_BODY_TOO_LARGE: {
    code: "too-large",
    path: "",
    found: "more bytes than may be sent here",
    expected: "at most 8 MB of JSON, a photo of 20 MB, or an archive of 1 GB",
  },
  FST_ERR_CTP_INVALID_MEDIA_TYPE: {
    code: "wrong-content-type",
    path: "content-type",
    found: "a kind of content this address does not take",
    expected: "application/json, or for uploads the kind they say they take",
  },
  FST_ERR_CTP_INVALID_CONTENT_LENGTH: {
    code: "cut-off",
    path: "",
    found: "a body of another length than it said",
    expected: "the whole body",
  },
};

/** What a route that takes bytes of some kind says to anything else. */
export const wrongContentType = (found: string | undefined, expected: string): Refusal =>
  new Refusal(415, { code: "wrong-content-type", path: "content-type", found: shown(found), expected });

/** Sends every error in one shape, with no stack in it. */
export function answerErrors(app: FastifyInstance, complain: (error: Error) => void): void {
  app.setErrorHandler((error: FastifyError, _request, reply) => {
    const refusal = refusalOf(error);
    if (refusal) return reply.status(statusOf(refusal)).send(errorAnswer(refusal));
    complain(error);
    return reply.status(500).send({ error: OWN_FAULT } satisfies ErrorAnswer);
  });
}

/** A fault of Wareboard's own. What it was stands in the log, not in the answer. */
const OWN_FAULT = {
  code: "own-fault",
  path: "",
  found: "a fault of Wareboard's own",
  expected: "no failure",
  message:
    "Wareboard itself failed, and nothing of this was kept. Try again; what happened stands where the server was started.",
} as const;

function refusalOf(error: FastifyError): BadInput | null {
  if (error instanceof BadInput) return error;
  const facts = FRAMEWORK_REFUSALS[error.code];
  if (facts) return new Refusal(error.statusCode ?? 400, facts);
  const status = error.statusCode ?? 500;
  if (status < 400 || status >= 500) return null;
  return new Refusal(status, {
    code: "bad-request",
    path: "",
    found: "a request that cannot be read",
    expected: "HTTP",
  });
}

const statusOf = (refusal: BadInput): number =>
  refusal instanceof Refusal ? refusal.status : (STATUS_OF[refusal.code] ?? 400);

/** A refusal as it is sent. */
export function errorAnswer({ code, path, found, expected, message }: BadInput): ErrorAnswer {
  return { error: { code, path, found, expected, message } };
}
