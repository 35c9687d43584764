import { statSync } from "node:fs";
import { basename } from "node:path";
import type { FastifyPluginAsyncTypebox } from "@fastify/type-provider-typebox";
import { type Static, Type } from "typebox";
import { shown } from "../../measures/bad-input.ts";
import { type Backup, backUp, listBackups, readBackup, restoreBackup } from "../../store/backups.ts";
import { answers } from "../answering/answers.ts";
import { Refusal } from "../answering/refusals.ts";
import { backupFolder } from "../running/data-folder.ts";
import type { Studio } from "../studio.ts";
import { RestoredShape, restored } from "./restored.ts";

const BackupShape = Type.Object(
  {
    name: Type.String({ description: "Its name, to restore it by." }),
    madeAt: Type.String({ description: "When it was made." }),
    beforeRestore: Type.Boolean({ description: "True where it was saved because a restore was about to replace it." }),
    byteLength: Type.Integer({ minimum: 0, description: "How large it is." }),
  },
  { additionalProperties: false },
);
const ByName = Type.Object(
  { name: Type.String({ minLength: 1, maxLength: 100, description: "The backup." }) },
  { additionalProperties: false },
);

/** GET and POST /backups, POST /backups/:name/restore. */
export const backupRoutes =
  (studio: Studio): FastifyPluginAsyncTypebox =>
  async (app) => {
    const folder = backupFolder(studio.dataFolder);
    app.get(
      "/backups",
      {
        schema: {
          summary: "The backups, newest first.",
          tags: ["archive"],
          response: answers(Type.Array(BackupShape)),
        },
      },
      async () => listBackups(folder).map(asAnswer),
    );
    app.post(
      "/backups",
      { schema: { summary: "Write a backup now.", tags: ["archive"], response: answers(BackupShape) } },
      async () => {
        const file = await backUp(studio.store, folder, studio.now());
        return asAnswer(backupNamed(folder, basename(file)));
      },
    );
    app.post(
      "/backups/:name/restore",
      {
        schema: {
          summary: "Put a backup in place of the studio, which is saved first.",
          tags: ["archive"],
          params: ByName,
          response: answers(RestoredShape),
        },
      },
      async ({ params }) => {
        const bytes = readBackup(backupNamed(folder, params.name));
        return restored(studio, () => restoreBackup(studio.store, bytes, folder, studio.now()));
      },
    );
  };

/** Found in the list, never made into a path: a name can lead nowhere else. */
function backupNamed(folder: string, name: string): Backup {
  const backup = listBackups(folder).find(({ file }) => basename(file) === name);
  if (backup) return backup;
  throw new Refusal(404, {
    code: "unknown-backup",
    path: "name",
    found: shown(name),
    expected: "a backup of the list; it may have been thinned out meanwhile",
  });
}

const asAnswer = ({ file, madeAt, beforeRestore }: Backup): Static<typeof BackupShape> => ({
  name: basename(file),
  madeAt,
  beforeRestore,
  byteLength: statSync(file).size,
});
