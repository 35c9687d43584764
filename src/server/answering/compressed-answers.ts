import { promisify } from "node:util";
import { constants, gzip } from "node:zlib";
import type { FastifyInstance } from "fastify";
import { isThisMachine } from "../guarding/this-machine.ts";

const compress = promisify(gzip);
/** A shorter answer fits into a packet or two as it is. */
const LEAST_CHARACTERS = 2048;

/**
 * Sends long answers in JSON compressed (gzip) to whoever takes them so, over the home network; within this machine
 * nothing is gained. Streams of events and files are left as they are.
 */
export function compressAnswers(app: FastifyInstance): void {
  app.addHook("onSend", async (request, reply, answer) => {
    if (typeof answer !== "string" || answer.length < LEAST_CHARACTERS || isThisMachine(request.ip)) return answer;
    if (!String(reply.getHeader("content-type")).startsWith("application/json")) return answer;
    reply.header("vary", "accept-encoding");
    if (!takesGzip(request.headers["accept-encoding"])) return answer;
    reply.header("content-encoding", "gzip").removeHeader("content-length");
    return compress(answer, { level: constants.Z_BEST_SPEED });
  });
}

/** Whether an Accept-Encoding header asks for gzip (RFC 9110, 12.5.3). */
function takesGzip(header: string | string[] | undefined): boolean {
  return String(header ?? "")
    .split(",")
    .map((each) =>
      each
        .trim()
        .toLowerCase()
        .split(/\s*;\s*/),
    )
    .some(([coding, weight]) => coding === "gzip" && !/^q=0(\.0*)?$/.test(weight ?? ""));
}
