import { existsSync } from "node:fs";
import { join } from "node:path";
import fastifyStatic from "@fastify/static";
import type { FastifyInstance } from "fastify";
import { Refusal } from "./answering/refusals.ts";

const YEAR_MS = 365 * 24 * 60 * 60_000;

/**
 * Hands out the built application. Files whose name changes with their content are kept by the browser for ever, all
 * others asked for again each time. An address that is no file is a screen of the application: it gets the first page.
 */
export async function handOutFiles(app: FastifyInstance, webFolder: string | null): Promise<void> {
  const folder = webFolder !== null && existsSync(join(webFolder, "index.html")) ? webFolder : null;
  if (folder !== null) {
    await app.register(fastifyStatic, {
      root: folder,
      cacheControl: false,
      dotfiles: "ignore",
      // What the build has compressed beside each file goes to whoever takes it.
      preCompressed: true,
      setHeaders: (reply, path) => {
        const hashed = path.startsWith(join(folder, "assets"));
        reply.header("cache-control", hashed ? `public, max-age=${YEAR_MS / 1000}, immutable` : "no-cache");
      },
    });
  }
  app.setNotFoundHandler((request, reply) => {
    const path = request.url.split("?", 1)[0] as string;
    const isScreen = request.method === "GET" && !path.startsWith("/api") && !/\.[a-z0-9]+$/i.test(path);
    if (isScreen && folder !== null) return reply.header("cache-control", "no-cache").sendFile("index.html");
    throw new Refusal(404, {
      code: "no-such-address",
      path: path.slice(0, 200),
      found: isScreen ? "no application to hand out: it has not been built" : "nothing there",
      expected: isScreen ? "`npm start` in Wareboard's folder, which builds it" : "an address of this studio",
    });
  });
}
