import type { FastifyPluginAsyncTypebox } from "@fastify/type-provider-typebox";
import { StudioSettingsSchema } from "../../studio/records/studio-settings.ts";
import { answers } from "../answering/answers.ts";
import type { Studio } from "../studio.ts";

/** GET /settings: what holds for the whole studio. The command change-settings changes it. */
export const settingsRoute =
  ({ store }: Studio): FastifyPluginAsyncTypebox =>
  async (app) => {
    app.get(
      "/settings",
      {
        schema: {
          summary: "What holds for the whole studio.",
          tags: ["studio"],
          response: answers(StudioSettingsSchema),
        },
      },
      async () => store.read((records) => records.settings.get()),
    );
  };
