import type { FastifyRequest } from "fastify";

declare module "fastify" {
  interface FastifyContextConfig {
    /** True for a route whose requests carry a token of their own: no cookie, no page of a browser, is asked of them. */
    readonly carriesToken?: boolean;
  }
}

/** Whether a request is for a route that looks at a token itself. */
export const carriesToken = (request: FastifyRequest): boolean => request.routeOptions.config.carriesToken === true;

const BEARER = /^Bearer +([A-Za-z0-9._~+/-]+=*)$/i;

/** The token of `Authorization: Bearer …` (RFC 6750, 2.1), or null. */
export const bearerToken = (request: FastifyRequest): string | null =>
  BEARER.exec(request.headers.authorization ?? "")?.[1] ?? null;
