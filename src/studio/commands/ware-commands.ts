import { Type } from "typebox";
import { BadInput } from "../../measures/bad-input.ts";
import { OneOf } from "../../measures/schema.ts";
import { orNull } from "../records/fields.ts";
import { applyWareImport } from "../records/ware-csv/apply-ware-import.ts";
import { previewWareImport, type WareImport } from "../records/ware-csv/preview-ware-import.ts";
import { WARE, WARE_STAGES, type WareRecord } from "../records/ware-record.ts";
import { changedWare } from "./changed-ware.ts";
import { batchesInWords, countOf } from "./in-words.ts";
import { command, Ids, input } from "./inputs.ts";
import { begun, changeKept, kept } from "./keeping.ts";
import { NewWareSchema, WareChangeSchema } from "./ware-inputs.ts";
import { changedInWords } from "./what-changed.ts";

const addWare = command({
  name: "add-ware",
  schema: input({ ware: Type.Array(NewWareSchema, { minItems: 1, maxItems: 5000 }) }),
  scope: () => "ware",
  run: async (records, { ware }, context) => {
    const added: WareRecord[] = ware.map(({ id, ...batch }) => ({ ...batch, ...begun(id, context) }));
    await records.ware.add(...added);
    return `Added ${batchesInWords(added.map((each) => each.ware))}`;
  },
});

const changeWare = command({
  name: "change-ware",
  schema: input({ ids: Ids("A batch."), change: WareChangeSchema }),
  scope: () => "ware",
  run: async (records, { ids, change }, { now }) => {
    const changes: { before: WareRecord; after: WareRecord }[] = [];
    for (const id of new Set(ids)) {
      const before = await kept(records.ware, WARE, id);
      changes.push({ before, after: await changeKept(records.ware, before, changedWare(before, change), now) });
    }
    return changedInWords(changes);
  },
});

const removeWare = command({
  name: "remove-ware",
  schema: input({ ids: Ids("A batch.") }),
  scope: () => "ware",
  run: async (records, { ids }) => {
    const removed: WareRecord[] = [];
    for (const id of new Set(ids)) {
      removed.push(await kept(records.ware, WARE, id));
      await records.ware.remove(id);
    }
    return `Took out ${batchesInWords(removed.map((each) => each.ware))}`;
  },
});

const importWare = command({
  name: "import-ware",
  schema: input({
    csv: Type.String({ maxLength: 8_000_000, description: "The ware list." }),
    stage: Type.Optional(orNull(OneOf(WARE_STAGES, "The stage of new ware where the list does not say."))),
  }),
  scope: () => "ware",
  run: async (records, { csv, stage }, { now, newId }) => {
    const setting = {
      ware: await records.ware.list(),
      clayBodies: await records.clayBodies.list(),
      glazes: await records.glazes.list(),
      stage: stage ?? null,
      newId,
      now,
    };
    const list = previewWareImport(csv, setting);
    refuseIfNothingComes(list);
    await applyWareImport(records, list);
    return importInWords(list);
  },
});

function refuseIfNothingComes({ rows }: WareImport): void {
  const refused = rows.find(({ what }) => what === "refused");
  if (refused === undefined || rows.some(({ what }) => what !== "refused")) return;
  throw new BadInput({
    code: "no-row-will-do",
    path: `line ${refused.line}`,
    found: `${rows.length === 1 ? "a row" : `${rows.length} rows`} of which none will do: ${refused.reason}`,
    expected: "at least one row that can be taken in",
  });
}

function importInWords({ rows }: WareImport): string {
  const many = (what: "new" | "changed" | "refused"): number => rows.filter((row) => row.what === what).length;
  const parts = [
    many("new") > 0 ? `${countOf(many("new"), "batch")} new` : "",
    many("changed") > 0 ? `${many("changed")} changed` : "",
    many("refused") > 0 ? `${many("refused")} left out` : "",
  ].filter((part) => part !== "");
  return `Took in a ware list: ${parts.length === 0 ? "all as it was" : parts.join(", ")}`;
}

export const WARE_COMMANDS = [addWare, changeWare, removeWare, importWare];
