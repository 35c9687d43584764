import type { FastifyPluginAsyncTypebox } from "@fastify/type-provider-typebox";
import type { StudioCard } from "../../studio/api/contract.ts";
import { KIND_NAMES } from "../../studio/records/record-kind.ts";
import { answers, StudioCardShape } from "../answering/answers.ts";
import type { Studio } from "../studio.ts";

/** GET /studio: the studio at a glance. */
export const studioCardRoute =
  (studio: Studio): FastifyPluginAsyncTypebox =>
  async (app) => {
    app.get(
      "/studio",
      { schema: { summary: "The studio at a glance.", tags: ["studio"], response: answers(StudioCardShape) } },
      async (): Promise<StudioCard> => {
        const counts = await studio.store.read(async (records) => {
          const counted = {} as Record<(typeof KIND_NAMES)[number], number>;
          for (const kind of KIND_NAMES) counted[kind] = (await records[kind].list()).length;
          return counted;
        });
        const isNew = KIND_NAMES.every((kind) => counts[kind] === 0);
        return { version: studio.version, isNew, counts, homeAddresses: studio.homeAddresses() };
      },
    );
  };
