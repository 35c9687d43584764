import swagger from "@fastify/swagger";
import type { FastifyInstance } from "fastify";
import { RECORD_SHAPES } from "../answering/answers.ts";

/** Writes the OpenAPI document from the routes' own schemas. Comes before the routes. */
export async function describeRoutes(app: FastifyInstance, version: string): Promise<void> {
  for (const shape of RECORD_SHAPES) app.addSchema(shape);
  await app.register(swagger, {
    openapi: {
      openapi: "3.1.0",
      info: {
        title: "Wareboard",
        version,
        description: "One potter's studio: her ware, kilns, loads and firings. Commands change it; each can be undone.",
      },
    },
    refResolver: {
      buildLocalReference: ({ $id }, _base, _fragment, i) => (typeof $id === "string" ? $id : `shape${i}`),
    },
  });
}

/** GET /openapi.json */
export function openApiRoute(app: FastifyInstance): void {
  app.get("/openapi.json", { schema: { hide: true } }, async () => app.swagger());
}
