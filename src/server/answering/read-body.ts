import type { FastifyInstance } from "fastify";
import { BadInput } from "../../measures/bad-input.ts";
import { readJson } from "../../measures/read-json.ts";

/** A command, an undo, a list of ware: none comes near this. */
export const MOST_JSON_BYTES = 8 * 1024 * 1024;

/**
 * Lets requests carry JSON and nothing else; routes that take pictures or archives say so themselves. An empty body is
 * no body.
 */
export function readJsonBodies(app: FastifyInstance): void {
  app.removeAllContentTypeParsers();
  app.addContentTypeParser(
    "application/json",
    { parseAs: "buffer", bodyLimit: MOST_JSON_BYTES },
    (_request, body, done) => {
      try {
        done(null, body.length === 0 ? undefined : readJson(asText(body as Buffer), ""));
      } catch (error) {
        done(error as Error);
      }
    },
  );
}

function asText(bytes: Buffer): string {
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    throw new BadInput({ code: "not-text", path: "", found: "bytes that are not UTF-8", expected: "JSON in UTF-8" });
  }
}
