import type { FastifyInstance, FastifyRequest } from "fastify";
import { Refusal } from "../answering/refusals.ts";
import { carriesToken } from "./own-token.ts";

const ONLY_LOOKS = new Set(["GET", "HEAD", "OPTIONS"]);
const HAS_BODY = new Set(["POST", "PUT", "PATCH"]);
// What no form of another page can send without asking first (the Fetch standard's preflight).
const CONTENT = /^(application\/json|application\/zip|image\/[a-z0-9.+-]+)(;|$)/i;

/**
 * Lets only the studio's own pages change anything. A browser says where a request comes from (Sec-Fetch-Site, Origin);
 * a program that is no browser says neither, and holds no cookie of hers.
 */
export function refuseOtherSites(app: FastifyInstance): void {
  app.addHook("onRequest", async (request) => {
    // No page of another site knows a logger's token, and no browser adds it by itself.
    if (ONLY_LOOKS.has(request.method) || carriesToken(request)) return;
    const { origin, "sec-fetch-site": site } = request.headers;
    if (site !== undefined && site !== "same-origin") throw otherSite(`a request from another site (${site})`);
    if (origin !== undefined && !isOwn(request, origin)) throw otherSite(`a request from "${origin.slice(0, 80)}"`);
    const content = request.headers["content-type"];
    if (!HAS_BODY.has(request.method) || CONTENT.test(content ?? "")) return;
    // A question without a body has no type; then only a browser's own word will do.
    if (content === undefined && (site !== undefined || origin !== undefined)) return;
    throw new Refusal(415, {
      code: "wrong-content-type",
      path: "content-type",
      found: content === undefined ? "nothing" : `"${content.slice(0, 80)}"`,
      expected: "application/json, or for uploads application/zip or image/…",
    });
  });
}

function isOwn(request: FastifyRequest, origin: string): boolean {
  try {
    return new URL(origin).host === request.headers.host?.toLowerCase();
  } catch {
    return false;
  }
}

const otherSite = (found: string): Refusal =>
  new Refusal(403, { code: "other-site", path: "origin", found, expected: "a page of this studio" });
