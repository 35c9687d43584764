import type { FastifyInstance } from "fastify";
import { Refusal } from "../answering/refusals.ts";

/** Names by which this machine alone reaches itself. */
export const LOOPBACK_HOSTS = ["localhost", "127.0.0.1", "[::1]"] as const;

/**
 * Answers only requests sent to one of the server's own names: else a page from elsewhere could have its own name point
 * at this machine and read the studio through it (DNS rebinding).
 */
export function answerOwnHosts(app: FastifyInstance, hosts: () => readonly string[]): void {
  app.addHook("onRequest", async (request) => {
    const host = hostOf(request.headers.host ?? request.headers[":authority"]);
    if (host !== null && hosts().includes(host)) return;
    throw new Refusal(421, {
      code: "wrong-host",
      path: "host",
      found: host === null ? "no name of a host" : `"${host}"`,
      expected: `an address of this studio: ${hosts().join(", ")}`,
    });
  });
}

/** `localhost:7420` → `localhost`; null where it is no host. */
export function hostOf(header: string | readonly string[] | undefined): string | null {
  if (typeof header !== "string") return null;
  return /^(\[[0-9a-f:.]+\]|[a-z0-9.-]+)(:\d{1,5})?$/i.exec(header)?.[1]?.toLowerCase() ?? null;
}
