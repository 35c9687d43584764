import type { FastifyPluginAsyncTypebox } from "@fastify/type-provider-typebox";
import { Type } from "typebox";
import { KINDS } from "../../studio/records/all-kinds.ts";
import { Id } from "../../studio/records/fields.ts";
import { KIND_NAMES } from "../../studio/records/record-kind.ts";
import { unknownRecord } from "../../studio/records/refusals.ts";
import { answers, recordShape } from "../answering/answers.ts";
import type { Studio } from "../studio.ts";

const ById = Type.Object({ id: Id("Which record.") }, { additionalProperties: false });

/** GET /ware, /ware/:id, and so on for each kind of record. */
export const recordRoutes =
  ({ store }: Studio): FastifyPluginAsyncTypebox =>
  async (app) => {
    for (const kind of KIND_NAMES) {
      const { one } = KINDS[kind];
      const shape = recordShape(kind);
      app.get(
        `/${kind}`,
        { schema: { summary: `Every ${one}, the oldest first.`, tags: [kind], response: answers(Type.Array(shape)) } },
        async (): Promise<object[]> => store.read((records): Promise<object[]> => records[kind].list()),
      );
      app.get(
        `/${kind}/:id`,
        { schema: { summary: `One ${one}.`, tags: [kind], params: ById, response: answers(shape) } },
        async ({ params }): Promise<object> => {
          const record = await store.read((records): Promise<object | null> => records[kind].get(params.id));
          if (record === null) throw unknownRecord(KINDS[kind], params.id);
          return record;
        },
      );
    }
  };
