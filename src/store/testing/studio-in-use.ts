import type { CommandAnswer } from "../../studio/api/contract.ts";
import { doCommand } from "../../studio/commands/do-command.ts";
import type { RecordOf } from "../../studio/records/all-kinds.ts";
import type { KindName } from "../../studio/records/record-kind.ts";
import type { StudioStore } from "../../studio/records/store.ts";
import { sqlitePlace } from "./places.ts";

/** A studio on SQLite for tests of what is done in it: a clock that stands still, ids that count up. */
export interface StudioInUse {
  readonly store: StudioStore;
  now: string;
  readonly give: (command: string, input: object) => Promise<CommandAnswer>;
  readonly get: <Kind extends KindName>(kind: Kind, id: string) => Promise<RecordOf[Kind]>;
  readonly end: () => Promise<void>;
}

/** Opens an empty studio in a temporary folder. */
export async function studioInUse(): Promise<StudioInUse> {
  const place = sqlitePlace();
  const store = await place.openEmpty();
  let ids = 0;
  const newId = (): string => `made-${++ids}`;
  const studio: StudioInUse = {
    store,
    now: "2026-11-25T12:00:00.000Z",
    give: (command, input) => doCommand(store, command, input, { key: newId(), now: studio.now, newId }),
    get: async (kind, id) => {
      const record: object | null = await store.read<object | null>((records) => records[kind].get(id));
      if (record === null) throw new Error(`No ${id} among ${kind}.`);
      return record as RecordOf[typeof kind];
    },
    end: async () => {
      await store.close();
      await place.end();
    },
  };
  return studio;
}
