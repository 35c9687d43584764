import type { FastifyPluginAsyncTypebox } from "@fastify/type-provider-typebox";
import type { StudioCard } from "../../studio/api/contract.ts";
import { isNew } from "../../studio/demo/begin.ts";
import { KIND_NAMES, type KindName } from "../../studio/records/record-kind.ts";
import { answers, StudioCardShape } from "../answering/answers.ts";
import type { Studio } from "../studio.ts";

/** GET /studio: the studio at a glance. */
export const studioCardRoute =
  (studio: Studio): FastifyPluginAsyncTypebox =>
  async (app) => {
    app.get(
      "/studio",
      { schema: { summary: "The studio at a glance.", tags: ["studio"], response: answers(StudioCardShape) } },
      async () => studioCard(studio),
    );
  };

/** What is kept, and whether she has begun. */
export const studioCard = ({ store, version, homeAddresses }: Studio): Promise<StudioCard> =>
  store.read(async (records) => {
    const counts = {} as Record<KindName, number>;
    for (const kind of KIND_NAMES) counts[kind] = await records[kind].count();
    return { version, isNew: await isNew(records), counts, homeAddresses: homeAddresses() };
  });
